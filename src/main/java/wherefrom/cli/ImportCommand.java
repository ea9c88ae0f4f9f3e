package wherefrom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import wherefrom.job.ports.Damage;
import wherefrom.job.ports.Equipment;

/** Brings a job back from one file. */
final class ImportCommand implements Command {
  private final Equipment equipment;

  ImportCommand(Equipment equipment) {
    this.equipment = equipment;
  }

  @Override
  public Usage usage() {
    return Usage.of(
            "import",
            "FILE.zip",
            "Brings a job back from one file, as a new folder.",
            Option.needed("--folder", "SHOP", "the folder of the jobs"))
        .noting("Exit status: 1 when the job was damaged already; it is brought back as it is.");
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput, IOException {
    if (call.operands().size() != 1) {
      throw call.wrong("Give the one file to import.");
    }
    Path file = call.path("FILE.zip", call.operands().get(0));
    Path shop = call.path("--folder");
    equipment.shelves().apply(shop).tidy();
    Path job = equipment.archives().restore(file, shop);
    List<String> damage = Damage.of(equipment.checks(), job);
    answer.only(
        Fields.of("folder", job.toString()).and("damage", damage), "Imported into " + job + ".");
    damage.forEach(answer::say);
    return Status.stoppedIf(!damage.isEmpty());
  }
}
