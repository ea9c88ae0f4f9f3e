package wherefrom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.job.PartRecord;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Corner;
import wherefrom.job.reader.Reading;
import wherefrom.job.reader.Unread;
import wherefrom.job.tray.PictureMark;
import wherefrom.job.tray.Tray;
import wherefrom.job.tray.TrayCheck;
import wherefrom.job.tray.TrayOut;
import wherefrom.parts.Part;

/** One photograph of a whole tray: its parts are logged as out, or held against the bench plan. */
final class TrayCommands {
  private static final Option PICTURE =
      Option.maybe(
          "--picture",
          "FILE",
          "a PNG of the photograph with every tag marked; - for standard output");

  /** What is done with the tray that was read. */
  private interface Deed {
    Status of(OpenedJob bench, Tray tray, Call call, Answer answer);
  }

  private TrayCommands() {}

  static List<Command> all() {
    return List.of(
        Command.of(
                "tray out",
                "Logs every part on one photograph of a tray as out of the engine.",
                Option.JOB,
                Option.flag("--preview", "show what would be logged; record nothing"),
                PICTURE,
                Outlet.REPLACE)
            .takes("FILE")
            .noting(
                "One line per part: digits, what was done, the part. Each part is a step that"
                    + " undo takes back.",
                "Exit status: 0 every tag in view was read, 1 some were not, or none was found.")
            .does((call, answer) -> run(TrayCommands::out, call, answer)),
        Command.of(
                "tray check",
                "Compares a tray photo with the job.",
                Option.JOB,
                PICTURE,
                Outlet.REPLACE)
            .takes("FILE")
            .noting(
                "One line per part: digits, here, elsewhere or absent, the part, where it is"
                    + " recorded. Absent are parts of the kinds on the photograph that are out of"
                    + " the engine and not read on it.",
                "Exit status: 0 all lies as recorded, 1 something does not.")
            .does((call, answer) -> run(TrayCommands::check, call, answer)));
  }

  private static Reading read(GreyImage picture, OpenedJob bench, Call call) {
    return call.services().reader().read(picture, bench.book().issued(), bench::printedElsewhere);
  }

  private static Status run(Deed deed, Call call, Answer answer) throws BadInput, IOException {
    Path file = call.path("FILE", call.operand("Give one picture file."));
    Optional<Outlet> marked = Outlet.find(call, PICTURE.name(), answer);
    try (OpenedJob bench = OpenedJob.open(call, answer)) {
      GreyImage picture = call.services().pictures().load(file);
      Reading reading = read(picture, bench, call);
      Tray tray = Tray.of(bench.job().state(), bench.names(), reading);
      if (marked.isPresent()) {
        call.services().pictures().saveMarked(picture, PictureMark.of(tray), marked.get().out());
      }
      Status status = deed.of(bench, tray, call, answer);
      sayBeside(tray, answer);
      return status.and(Status.stoppedIf(!tray.unread().isEmpty() || tray.parts().isEmpty()));
    }
  }

  private static void sayBeside(Tray tray, Answer answer) {
    tray.others().forEach(other -> answer.say("Also on the tray: " + other.words()));
    for (Unread unread : tray.unread()) {
      answer.say(
          "A tag at " + place(unread.outline()) + " cannot be read. " + unread.cause().hint());
    }
  }

  private static Status out(OpenedJob bench, Tray tray, Call call, Answer answer) {
    boolean show = call.find("--preview").isPresent();
    List<PartRecord> wanted = tray.toLog();
    List<PartRecord> logged = show ? List.of() : new TrayOut(bench.job()).log(tray);
    List<Integer> items = logged.stream().map(part -> part.part().item()).toList();
    for (Tray.Lying lying : tray.parts()) {
      boolean due = wanted.contains(lying.part());
      String done = items.contains(lying.part().part().item()) ? "out" : due ? "to log" : "left";
      list(bench, lying, done, answer);
    }
    return Status.RIGHT;
  }

  private static Status check(OpenedJob bench, Tray tray, Call call, Answer answer) {
    TrayCheck check = TrayCheck.of(bench.job().state(), tray);
    check.right().forEach(lying -> list(bench, lying, "here", answer));
    check.elsewhere().forEach(lying -> list(bench, lying, "elsewhere", answer));
    check.absent().forEach(part -> list(bench, part, "absent", Stream.empty(), answer));
    if (!check.otherKinds().isEmpty()) {
      answer.say("Also out, none of them on this photograph: " + check.otherWords() + ".");
    }
    return Status.stoppedIf(!check.agrees());
  }

  private static void list(OpenedJob bench, Tray.Lying lying, String done, Answer answer) {
    list(bench, lying.part(), done, lying.sighting().corners().stream(), answer);
  }

  private static void list(
      OpenedJob bench, PartRecord part, String done, Stream<Corner> corners, Answer answer) {
    Part of = part.part();
    String where = bench.state().getPart(of.item()).where().words();
    List<List<Long>> outline =
        corners.map(each -> List.of(Math.round(each.x()), Math.round(each.y()))).toList();
    answer.row(new TrayRow(bench.digits(of), done, of.words(), where, outline));
  }

  private record TrayRow(
      String code, String done, String part, String where, List<List<Long>> corners)
      implements Row {
    @Override
    public String text() {
      return Answer.cells(code, done, part, where);
    }
  }

  private static String place(List<Corner> outline) {
    double x = outline.stream().mapToDouble(Corner::x).average().orElse(0);
    double y = outline.stream().mapToDouble(Corner::y).average().orElse(0);
    return Math.round(x) + ", " + Math.round(y);
  }
}
