package wherefrom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.job.PartRecord;
import wherefrom.job.image.GreyImage;
import wherefrom.job.ports.Equipment;
import wherefrom.job.reader.Corner;
import wherefrom.job.reader.Reading;
import wherefrom.job.reader.Unread;
import wherefrom.job.tray.PictureMark;
import wherefrom.job.tray.Tray;
import wherefrom.job.tray.TrayCheck;
import wherefrom.job.tray.TrayOut;

/** One photograph of a whole tray: its parts are logged as out, or held against the bench plan. */
final class TrayCommand implements Command {
  private static final Option PICTURE =
      Option.maybe(
          "--picture",
          "FILE",
          "a PNG of the photograph with every tag marked; - for standard output");

  /** What is done with the tray that was read. */
  private interface Deed {
    Status of(Bench bench, Tray tray, Call call, Answer answer);
  }

  private final Usage usage;
  private final Deed deed;
  private final Equipment equipment;

  private TrayCommand(Usage usage, Deed deed, Equipment equipment) {
    this.usage = usage;
    this.deed = deed;
    this.equipment = equipment;
  }

  static List<Command> all(Equipment equipment) {
    return List.of(
        new TrayCommand(
            Usage.of(
                    "tray out",
                    "FILE",
                    "Logs every part on one photograph of a tray as out of the engine.",
                    Option.JOB,
                    Option.flag("--show", "only show what would be logged"),
                    PICTURE,
                    Outlet.REPLACE)
                .noting(
                    "A line a part: digits, what was done, the part. Each part is a step that"
                        + " take-back takes back.",
                    "Exit status: 0 every tag in view was read, 1 some were not, or none was"
                        + " found."),
            TrayCommand::out,
            equipment),
        new TrayCommand(
            Usage.of(
                    "tray check",
                    "FILE",
                    "Holds one photograph of a tray against what the job records.",
                    Option.JOB,
                    PICTURE,
                    Outlet.REPLACE)
                .noting(
                    "A line a part: digits, here, elsewhere or absent, the part, where it is"
                        + " recorded. Absent are parts of the kinds on the photograph that are out"
                        + " of the engine and not read on it.",
                    "Exit status: 0 all lies as recorded, 1 something does not."),
            TrayCommand::check,
            equipment));
  }

  @Override
  public Usage usage() {
    return usage;
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput, IOException {
    if (call.operands().size() != 1) {
      throw call.wrong("Give one picture file.");
    }
    Path file = call.path("FILE", call.operands().get(0));
    Optional<Outlet> marked = Outlet.find(call, PICTURE.name(), answer);
    try (Bench bench = Bench.open(equipment, call, answer)) {
      GreyImage picture = equipment.pictures().load(file);
      Reading reading = equipment.reader().read(picture, bench.book().issued());
      Tray tray = Tray.of(bench.job().state(), bench.names(), reading);
      if (marked.isPresent()) {
        equipment.pictures().saveMarked(picture, PictureMark.of(tray), marked.get().out());
      }
      Status status = deed.of(bench, tray, call, answer);
      tray.others().forEach(other -> answer.say("Also on the tray: " + other.words()));
      for (Unread unread : tray.unread()) {
        answer.say(
            "A tag at " + place(unread.outline()) + " cannot be read. " + unread.cause().hint());
      }
      return status.and(Status.stoppedIf(!tray.unread().isEmpty() || tray.parts().isEmpty()));
    }
  }

  private static Status out(Bench bench, Tray tray, Call call, Answer answer) {
    boolean show = call.find("--show").isPresent();
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

  private static Status check(Bench bench, Tray tray, Call call, Answer answer) {
    TrayCheck check = TrayCheck.of(bench.job().state(), tray);
    check.right().forEach(lying -> list(bench, lying, "here", answer));
    check.elsewhere().forEach(lying -> list(bench, lying, "elsewhere", answer));
    check.absent().forEach(part -> list(bench, part, "absent", Stream.empty(), answer));
    if (!check.otherKinds().isEmpty()) {
      answer.say("Also out, none of them on this photograph: " + check.otherWords() + ".");
    }
    return Status.stoppedIf(!check.agrees());
  }

  private static void list(Bench bench, Tray.Lying lying, String done, Answer answer) {
    list(bench, lying.part(), done, lying.sighting().corners().stream(), answer);
  }

  private static void list(
      Bench bench, PartRecord part, String done, Stream<Corner> corners, Answer answer) {
    String digits = bench.book().of(part.part()).digits();
    String where = bench.job().state().getPart(part.part().item()).where().words();
    List<List<Long>> outline =
        corners.map(each -> List.of(Math.round(each.x()), Math.round(each.y()))).toList();
    answer.row(
        Fields.of("code", digits)
            .and("done", done)
            .and("part", part.part().words())
            .and("where", where)
            .and("corners", outline),
        Answer.cells(digits, done, part.part().words(), where));
  }

  private static String place(List<Corner> outline) {
    double x = outline.stream().mapToDouble(Corner::x).average().orElse(0);
    double y = outline.stream().mapToDouble(Corner::y).average().orElse(0);
    return Math.round(x) + ", " + Math.round(y);
  }
}
