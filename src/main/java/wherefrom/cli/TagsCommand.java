package wherefrom.cli;

import java.io.IOException;
import java.util.List;
import java.util.OptionalInt;
import wherefrom.job.print.Nudge;
import wherefrom.job.print.PrintOutcome;
import wherefrom.job.print.PrintSetup;
import wherefrom.job.print.Unprintable;

/** Makes sheets of tags and cards. */
final class TagsCommand {
  private static final int MOST_LABELS = 9999;

  private TagsCommand() {}

  static Command of() {
    return Command.of(
            "tags",
            "Makes the sheets of tags or cards as a PDF file.",
            Option.JOB,
            Option.needed("--stock", "NAME", "one that wherefrom stocks lists, or your own file"),
            Option.needed("--out", "F.pdf", "where to write; - for standard output"),
            Outlet.REPLACE,
            Option.maybe(
                "--cards",
                "places|actions|baskets|bags|big-parts|scanner",
                "cards and other tags instead of the parts' tags"),
            Option.several("--only", "ITEM", "item numbers, codes or kinds of part"),
            Option.THIS_ENGINE,
            Option.flag("--new", "only the tags that no sheet holds yet"),
            Option.maybe("--start", "N", "the first label to use on a half-used sheet"),
            Option.maybe("--count", "N", "how many baskets or bags, 8 where not given"),
            Option.maybe("--dpi", "N", "the printer's dots per inch: 203, 300 or 600"),
            Option.maybe("--nudge", "RIGHT,DOWN", "moves the print, in steps of half a millimeter"),
            Option.flag("--test-page", "label outlines and rulers instead of tags"))
        .noting("Print at 100 %, never \"fit to page\", and hold a ruler to the sheet's ruler.")
        .does((call, answer) -> make(call, answer));
  }

  private static Status make(Call call, Answer answer) throws BadInput, IOException {
    PrintSetup setup = setup(call);
    Outlet outlet = Outlet.get(call, "--out", answer);
    try (OpenedJob bench = OpenedJob.open(call, answer)) {
      TagSheet sheet = new TagSheet(bench, call, setup);
      Unprintable.warning(call.services().printer(), sheet.order()).ifPresent(answer::say);
      PrintOutcome.Printed printed = sheet.make(outlet);
      return answer.only(
          new Row.Told(
              outlet.name() + ": labels " + printed.labels() + ", pages " + printed.pages() + ".",
              Json.object(
                  "file", outlet.name(),
                  "labels", printed.labels(),
                  "pages", printed.pages())));
    }
  }

  private static PrintSetup setup(Call call) throws BadInput {
    int start = call.number("--start", 1, 1, MOST_LABELS);
    int dpi = call.number("--dpi", 0, 1, MOST_LABELS);
    OptionalInt dots = dpi == 0 ? OptionalInt.empty() : OptionalInt.of(dpi);
    return new PrintSetup(call.get("--stock"), start, nudge(call), dots);
  }

  private static Nudge nudge(Call call) throws BadInput {
    if (call.find("--nudge").isEmpty()) {
      return Nudge.NONE;
    }
    List<String> steps = call.listed("--nudge");
    try {
      if (steps.size() == 2) {
        return new Nudge(Integer.parseInt(steps.get(0)), Integer.parseInt(steps.get(1)));
      }
    } catch (IllegalArgumentException e) {
      // Said below.
    }
    throw call.wrong(
        "--nudge: give two whole numbers from -"
            + Nudge.MOST
            + " to "
            + Nudge.MOST
            + " with a comma between.");
  }
}
