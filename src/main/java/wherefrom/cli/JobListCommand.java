package wherefrom.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import wherefrom.job.ports.Equipment;
import wherefrom.job.shelf.Resume;
import wherefrom.job.shelf.Shelf;

/** Lists the jobs of a shop. */
final class JobListCommand implements Command {
  private final Equipment equipment;

  JobListCommand(Equipment equipment) {
    this.equipment = equipment;
  }

  @Override
  public Usage usage() {
    return Usage.of(
            "job list",
            "",
            "Lists the jobs of a shop, the one last worked on first.",
            Option.maybe("--folder", "SHOP", "the folder of the jobs; the settings' if not given"))
        .noting("A line a job: folder, name, when it was last worked on (UTC), what to do next.");
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput {
    Path shop =
        call.find("--folder").isPresent()
            ? call.path("--folder")
            : equipment.settings().load().shop();
    if (!Files.isDirectory(shop)) {
      throw new BadInput("There is no folder " + shop + ". Give the folder of the jobs.");
    }
    for (Shelf.Entry entry : equipment.shelves().apply(shop).list()) {
      list(entry, answer);
    }
    return Status.RIGHT;
  }

  private static void list(Shelf.Entry entry, Answer answer) {
    String touched = entry.resume().map(resume -> resume.lastTouched().toString()).orElse("");
    String next = entry.resume().map(Resume::doNext).orElse("");
    String trouble = entry.trouble().isEmpty() ? next : entry.trouble();
    answer.row(
        Fields.of("folder", entry.folder().toString())
            .and("name", entry.name())
            .and("lastTouched", touched)
            .and("doNext", next)
            .and("trouble", entry.trouble()),
        Answer.cells(entry.folder().toString(), entry.name(), touched, trouble));
  }
}
