package wherefrom.cli;

import java.io.IOException;
import java.nio.file.Path;
import wherefrom.demo.DemoJob;

/** Copies the demo job out. */
final class DemoCommand implements Command {

  @Override
  public Usage usage() {
    return Usage.of(
        "demo",
        "",
        "Copies the invented demo job, part-way through, to a folder to try things on.",
        Option.needed("--folder", "DIR", "the copy's own folder, not there yet"));
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput, IOException {
    Path folder = call.path("--folder").toAbsolutePath().normalize();
    DemoJob.copyTo(folder);
    answer.only(
        Fields.of("folder", folder.toString()),
        "The demo job lies in " + folder + ". wherefrom resume --job says what to do next.");
    return Status.RIGHT;
  }
}
