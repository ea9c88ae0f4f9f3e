package wherefrom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import wherefrom.job.Equipment;

/** Writes a whole job to one file. */
final class ExportCommand implements Command {
  private final Equipment equipment;

  ExportCommand(Equipment equipment) {
    this.equipment = equipment;
  }

  @Override
  public Usage usage() {
    return Usage.of(
        "export",
        "",
        "Writes a whole job, photographs included, to one file.",
        Option.JOB,
        Option.needed("--out", "FILE.zip", "where to write; - for standard output"),
        Outlet.REPLACE);
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput, IOException {
    Outlet outlet = Outlet.get(call, "--out", answer);
    if (outlet.isFresh()) {
      equipment.archives().export(call.path("--job"), Path.of(outlet.name()));
    } else {
      exportAside(call.path("--job"), outlet);
    }
    answer.only(Fields.of("file", outlet.name()), "Exported to " + outlet.name() + ".");
    return Status.RIGHT;
  }

  /** The whole of it is made before an older file goes, or a stream gets the first of it. */
  private void exportAside(Path job, Outlet outlet) throws IOException {
    Path folder = Files.createTempDirectory("wherefrom-");
    Path whole = folder.resolve("job.zip");
    try {
      equipment.archives().export(job, whole);
      outlet.write(out -> Files.copy(whole, out));
    } finally {
      Files.deleteIfExists(whole);
      Files.delete(folder);
    }
  }
}
