package wherefrom.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import wherefrom.job.ports.Backups;
import wherefrom.job.ports.CheckFinding;
import wherefrom.job.ports.Damage;

/** A job's files: checked, copied, written out, brought back; the report for who mends all this. */
final class FileCommands {

  private FileCommands() {}

  static List<Command> all() {
    return List.of(check(), backup(), export(), restore(), report());
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

  private static Command check() {
    return Command.of("check", "Checks a job's files; changes nothing.", Option.JOB)
        .noting("Exit status: 0 when nothing is damaged, 1 when something is.")
        .does(
            (call, answer) -> {
              List<CheckFinding> findings = call.services().checks().check(call.path("--job"));
              findings.stream().map(FindingRow::of).forEach(answer::row);
              return Status.stoppedIf(
                  findings.stream()
                      .anyMatch(each -> each.severity() == CheckFinding.Severity.DAMAGED));
            });
  }

  private record CopiedRow(Backups.Copied copied) implements Row {
    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "folder", copied.folder(),
          "files", copied.files(),
          "upTo", copied.upTo(),
          "damage", copied.damage(),
          "safeToPullOut", copied.settled());
    }

    @Override
    public String text() {
      String next =
          copied.settled()
              ? "Everything is on it: safe to pull out."
              : "Eject it before you pull it out: this system does not say when all is on it.";
      return "Copied to " + copied.folder() + ": files written " + copied.files() + ".\n" + next;
    }
  }

  private static Command backup() {
    return Command.of(
            "backup",
            "Updates the copy of a job on a USB drive or another disk.",
            Option.JOB,
            Option.needed("--to", "FOLDER", "the folder that holds the copies"))
        .noting(
            "Exit status: 1 when the job is damaged; a damaged logbook is copied to a folder of its"
                + " own, and no older copy is written over.")
        .does(
            (call, answer) -> {
              Backups.Copied copied =
                  call.services().backups().copy(call.path("--job"), call.path("--to"));
              answer.only(new CopiedRow(copied));
              return said(copied.damage(), answer);
            });
  }

  private static Status said(List<String> damage, Answer answer) {
    damage.forEach(answer::say);
    return Status.stoppedIf(!damage.isEmpty());
  }

  private static Command export() {
    return Command.of(
            "export",
            "Writes a whole job, photographs included, to one file.",
            Option.JOB,
            Option.needed("--out", "FILE.zip", "where to write; - for standard output"),
            Outlet.REPLACE)
        .noting(
            "Exit status: 1 when the job is damaged; it is written as it is, and never over an"
                + " older file.")
        .does(FileCommands::export);
  }

  private static Status export(Call call, Answer answer) throws BadInput, IOException {
    Path job = call.path("--job");
    Outlet outlet = Outlet.get(call, "--out", answer);
    List<String> damage = Damage.of(call.services().checks(), job);
    if (!damage.isEmpty() && outlet.place() == Outlet.Place.TAKEN) {
      damage.forEach(answer::say);
      throw call.wrong(
          "The job is damaged, and "
              + outlet.name()
              + " may be a sound copy: it stays as it is. Give another name.");
    }
    if (outlet.place() == Outlet.Place.FREE) {
      call.services().archives().export(job, Path.of(outlet.name()));
    } else {
      exportAside(call, job, outlet);
    }
    answer.only(
        new Row.Told(
            "Exported to " + outlet.name() + ".",
            Json.object("file", outlet.name(), "damage", damage)));
    return said(damage, answer);
  }

  /** The whole of it is made before an older file goes, or a stream gets the first of it. */
  private static void exportAside(Call call, Path job, Outlet outlet) throws IOException {
    Path folder = Files.createTempDirectory("wherefrom-");
    Path whole = folder.resolve("job.zip");
    try {
      call.services().archives().export(job, whole);
      outlet.write(out -> Files.copy(whole, out));
    } finally {
      Files.deleteIfExists(whole);
      Files.delete(folder);
    }
  }

  private static Command restore() {
    return Command.of(
            "import",
            "Brings a job back from one file, as a new folder.",
            Option.needed("--folder", "JOBS", "the jobs folder"))
        .takes("FILE.zip")
        .noting("Exit status: 1 when the job was damaged already; it is brought back as it is.")
        .does(
            (call, answer) -> {
              Path file = call.path("FILE.zip", call.operand("Give the one file to import."));
              Path shop = call.path("--folder");
              call.services().shelves().apply(shop).tidy();
              Path job = call.services().archives().restore(file, shop);
              List<String> damage = Damage.of(call.services().checks(), job);
              answer.only(
                  new Row.Told(
                      "Imported into " + job.toString() + ".",
                      Json.object("folder", job.toString(), "damage", damage)));
              return said(damage, answer);
            });
  }

  private static Command report() {
    return Command.of(
            "report",
            "Writes version, system and log to a file, for whoever fixes the program.",
            Option.needed("--out", "F.txt", "where to write; - for standard output"),
            Option.maybe("--job", "DIR", "adds the logbook of this job"),
            Outlet.REPLACE)
        .noting("Nothing of any job is in it without --job.")
        .does(
            (call, answer) -> {
              Outlet outlet = Outlet.get(call, "--out", answer);
              boolean withJob = call.find("--job").isPresent();
              String logbook = withJob ? call.services().archives().text(call.path("--job")) : "";
              String text = call.services().program().report() + logbook;
              outlet.write(out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
              return answer.only(
                  new Row.Told(
                      "The report is " + outlet.name() + ".", Json.object("file", outlet.name())));
            });
  }
}
