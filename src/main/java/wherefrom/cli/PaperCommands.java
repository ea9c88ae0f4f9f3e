package wherefrom.cli;

import java.io.IOException;
import java.util.List;
import wherefrom.files.Outgoing;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.ToFitSheet;
import wherefrom.job.ports.Reports;

/** Sheets for the bench: plans to lay parts on, and the list of what is still to fit. */
final class PaperCommands {
  private static final Option OUT =
      Option.needed("--out", "F.pdf", "where to write; - for standard output");

  /** Writes one of the sheets. */
  @FunctionalInterface
  private interface Writing {
    void write(Reports reports, ToFitSheet plan, PaperSize paper, Outgoing out) throws IOException;
  }

  private PaperCommands() {}

  static List<Command> all() {
    return List.of(
        sheet(
            "paper bench",
            "Draws the engine on a sheet for each side, to lay the parts on.",
            Reports::writeBenchPlan),
        sheet(
            "paper rack",
            "Draws a field for each part, in the engine's order, to lay it into.",
            Reports::writeRackPlan),
        sheet(
            "paper to-fit",
            "Lists what is still to fit, section by section, each with a box to tick.",
            Reports::writeToFit));
  }

  private static Command sheet(String name, String what, Writing writing) {
    return Command.of(name, what, OUT, PaperOption.BENCH.option(), Outlet.REPLACE)
        .onJob((bench, call, answer) -> write(bench, call, answer, writing));
  }

  private record Sheet(String file, int open) implements Row {
    @Override
    public String text() {
      return file + ": " + open + " places still to fill.";
    }
  }

  private static Status write(OpenedJob bench, Call call, Answer answer, Writing writing)
      throws BadInput, IOException {
    PaperSize paper = PaperOption.BENCH.get(call);
    Outlet outlet = Outlet.get(call, "--out", answer);
    ToFitSheet plan = ToFitSheet.of(bench.state());
    writing.write(call.services().reports(), plan, paper, outlet.out());
    return answer.only(new Sheet(outlet.name(), plan.places().size()));
  }
}
