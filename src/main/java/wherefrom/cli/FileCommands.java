package wherefrom.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import wherefrom.job.ports.Backups;
import wherefrom.job.ports.CheckFinding;
import wherefrom.job.ports.Damage;
import wherefrom.job.ports.Equipment;

/** A job's files: checked, copied, written out, brought back; the report for who mends all this. */
final class FileCommands {
  private final Equipment equipment;

  private FileCommands(Equipment equipment) {
    this.equipment = equipment;
  }

  static List<Command> all(Equipment equipment) {
    FileCommands files = new FileCommands(equipment);
    return List.of(
        files.check(), files.backup(), files.export(), files.restore(), files.report());
  }

  private record FindingRow(String severity, String sentence, String remedy) implements Row {
    static FindingRow of(CheckFinding found) {
      return new FindingRow(found.severity().word(), found.sentence(), found.remedy());
    }

    @Override
    public String text() {
      return Answer.cells(severity, (sentence + " " + remedy).strip());
    }
  }

  private Command check() {
    return Command.of(
            "check", "", "Looks whether a job's files are sound; only reads.", Option.JOB)
        .noting("Exit status: 0 when nothing is damaged, 1 when something is.")
        .does(
            (call, answer) -> {
              List<CheckFinding> findings = equipment.checks().check(call.path("--job"));
              findings.stream().map(FindingRow::of).forEach(answer::row);
              return Status.stoppedIf(
                  findings.stream()
                      .anyMatch(each -> each.severity() == CheckFinding.Severity.DAMAGED));
            });
  }

  private record CopiedRow(
      String folder, int files, long upTo, List<String> damage, boolean safeToPullOut)
      implements Row {
    static CopiedRow of(Backups.Copied copied) {
      return new CopiedRow(
          copied.folder().toString(),
          copied.files(),
          copied.upTo(),
          copied.damage(),
          copied.settled());
    }

    @Override
    public String text() {
      return "Copied to "
          + folder
          + ": files written "
          + files
          + ".\n"
          + (safeToPullOut
              ? "Everything is on it: safe to pull out."
              : "Eject it before you pull it out: this system does not say when all is on it.");
    }
  }

  private Command backup() {
    return Command.of(
            "backup",
            "",
            "Brings the copy of a job on a USB drive or another disk up to date.",
            Option.JOB,
            Option.needed("--to", "FOLDER", "the folder that holds the copies"))
        .noting(
            "Exit status: 1 when the job is damaged; a damaged logbook is copied to a folder of its"
                + " own, and no older copy is written over.")
        .does(
            (call, answer) -> {
              Backups.Copied copied =
                  equipment.backups().copy(call.path("--job"), call.path("--to"));
              answer.only(CopiedRow.of(copied));
              return said(copied.damage(), answer);
            });
  }

  private static Status said(List<String> damage, Answer answer) {
    damage.forEach(answer::say);
    return Status.stoppedIf(!damage.isEmpty());
  }

  private record ExportedRow(String file, List<String> damage) implements Row {
    @Override
    public String text() {
      return "Exported to " + file + ".";
    }
  }

  private Command export() {
    return Command.of(
            "export",
            "",
            "Writes a whole job, photographs included, to one file.",
            Option.JOB,
            Option.needed("--out", "FILE.zip", "where to write; - for standard output"),
            Outlet.REPLACE)
        .noting(
            "Exit status: 1 when the job is damaged; it is written as it is, and never over an"
                + " older file.")
        .does(this::export);
  }

  private Status export(Call call, Answer answer) throws BadInput, IOException {
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
    answer.only(new ExportedRow(outlet.name(), damage));
    return said(damage, answer);
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

  private record ImportedRow(String folder, List<String> damage) implements Row {
    @Override
    public String text() {
      return "Imported into " + folder + ".";
    }
  }

  private Command restore() {
    return Command.of(
            "import",
            "FILE.zip",
            "Brings a job back from one file, as a new folder.",
            Option.needed("--folder", "SHOP", "the folder of the jobs"))
        .noting("Exit status: 1 when the job was damaged already; it is brought back as it is.")
        .does(
            (call, answer) -> {
              Path file = call.path("FILE.zip", call.operand("Give the one file to import."));
              Path shop = call.path("--folder");
              equipment.shelves().apply(shop).tidy();
              Path job = equipment.archives().restore(file, shop);
              List<String> damage = Damage.of(equipment.checks(), job);
              answer.only(new ImportedRow(job.toString(), damage));
              return said(damage, answer);
            });
  }

  private record ReportRow(String file) implements Row {
    @Override
    public String text() {
      return "The report is " + file + ".";
    }
  }

  private Command report() {
    return Command.of(
            "report",
            "",
            "Writes version, system and log to a file, for whoever mends the program.",
            Option.needed("--out", "F.txt", "where to write; - for standard output"),
            Option.maybe("--job", "DIR", "adds the logbook of this job"),
            Outlet.REPLACE)
        .noting("Nothing of any job is in it without --job.")
        .does(
            (call, answer) -> {
              Outlet outlet = Outlet.get(call, "--out", answer);
              boolean withJob = call.find("--job").isPresent();
              String logbook = withJob ? equipment.archives().text(call.path("--job")) : "";
              String text = equipment.program().report() + logbook;
              outlet.write(out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
              return answer.only(new ReportRow(outlet.name()));
            });
  }
}
