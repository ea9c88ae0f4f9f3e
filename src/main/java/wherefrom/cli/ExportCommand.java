package wherefrom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import wherefrom.job.ports.Damage;
import wherefrom.job.ports.Equipment;

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
            Outlet.REPLACE)
        .noting(
            "Exit status: 1 when the job is damaged; it is written as it is, and never over an"
                + " older file.");
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput, IOException {
    Path job = call.path("--job");
    Outlet outlet = Outlet.get(call, "--out", answer);
    List<String> damage = Damage.of(equipment.checks(), job);
    if (!damage.isEmpty() && outlet.place() == Outlet.Place.TAKEN) {
      damage.forEach(answer::say);
      throw call.wrong(
          "The job is damaged, and "
              + outlet.name()
              + " may be a sound copy: it stays as it is. Give another name.");
    }
    if (outlet.place() == Outlet.Place.FREE) {
      equipment.archives().export(job, Path.of(outlet.name()));
    } else {
      exportAside(job, outlet);
    }
    answer.only(
        Fields.of("file", outlet.name()).and("damage", damage),
        "Exported to " + outlet.name() + ".");
    damage.forEach(answer::say);
    return Status.stoppedIf(!damage.isEmpty());
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
