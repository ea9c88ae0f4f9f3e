package wherefrom.ui.record;

import java.util.List;
import java.util.Optional;
import wherefrom.files.FileNames;
import wherefrom.files.Outgoing;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.ToFitSheet;
import wherefrom.job.ports.Reports;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ScreenContext;

/** The sheets that lie on the bench: which one, on what paper; then their pages. */
public final class BenchSheets {

  /** Writes one of them. */
  @FunctionalInterface
  private interface Writing {
    void write(Reports reports, ToFitSheet plan, PaperSize paper, Outgoing pdf)
        throws java.io.IOException;
  }

  private BenchSheets() {}

  /** Asks which sheet, then on what paper. */
  public static void ask(ScreenContext context) {
    List<Choice<Runnable>> sheets =
        List.of(
            sheet(context, "Bench plan", "the engine, to lay parts on", Reports::writeBenchPlan),
            sheet(context, "Rack plan", "a field for each part", Reports::writeRackPlan),
            sheet(context, "Still to fit", "a list with boxes to tick", Reports::writeToFit));
    context
        .navigator()
        .open(() -> new ChoiceScreen<>(context, "Bench sheets", sheets, Runnable::run));
  }

  private static Choice<Runnable> sheet(
      ScreenContext context, String name, String what, Writing writing) {
    return new Choice<>(() -> paper(context, name, writing), name, what);
  }

  private static void paper(ScreenContext context, String name, Writing writing) {
    List<Choice<PaperSize>> papers =
        List.of(
            new Choice<>(PaperSize.A4, "A4", "210 by 297 mm"),
            new Choice<>(PaperSize.A3, "A3", "297 by 420 mm"),
            new Choice<>(PaperSize.LETTER, "Letter", "8½ by 11 in"));
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context, name + ": paper", papers, size -> open(context, name, writing, size)));
  }

  private static void open(ScreenContext context, String name, Writing writing, PaperSize size) {
    ToFitSheet plan = ToFitSheet.of(context.state());
    Paper paper =
        new Paper(
            name,
            FileNames.of(plan.job(), name, ".pdf"),
            pdf -> writing.write(context.services().reports(), plan, size, pdf),
            Optional::empty);
    context.navigator().open(() -> new PaperScreen(context, paper));
  }
}
