package wherefrom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import wherefrom.job.Damage;
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
            Option.needed("--out", "FILE.zip", "where to write; must not exist yet"))
        .noting("Exit status: 1 when the job is damaged; it is written as it is.");
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput, IOException {
    Path file = call.path("--out");
    equipment.archives().export(call.path("--job"), file);
    List<String> damage = Damage.of(equipment.checks(), call.path("--job"));
    answer.only(
        Fields.of("file", file.toString()).and("damage", damage), "Exported to " + file + ".");
    damage.forEach(answer::say);
    return Status.stoppedIf(!damage.isEmpty());
  }
}
