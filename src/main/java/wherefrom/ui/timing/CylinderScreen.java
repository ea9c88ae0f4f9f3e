package wherefrom.ui.timing;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.job.timing.TimingBook;
import wherefrom.job.timing.TimingCheck;
import wherefrom.text.Words;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.workings.timing.Comparison;

/** One cylinder's timing beside the cam card. */
public final class CylinderScreen extends Page {
  private final int cylinder;
  private final TimingBook book;
  private final Pager<Region> rows;

  CylinderScreen(ScreenContext context, int cylinder) {
    super(context, "");
    this.cylinder = cylinder;
    book = new TimingBook(context.getJob());
    rows = Pager.list(context.touch(), row -> row);
    lay(
        Panes.column(
            context.scale(),
            rows,
            KeyRow.of(
                context,
                lobe("Intake readings", ValveSide.INTAKE),
                lobe("Exhaust readings", ValveSide.EXHAUST),
                new KeyRow.Act("Card from", this::source))));
  }

  private KeyRow.Act lobe(String words, ValveSide side) {
    return new KeyRow.Act(
        words, () -> open(() -> new LobeScreen(context, new ValveSpot(cylinder, side))));
  }

  private void source() {
    open(
        () ->
            new TextEntryScreen(
                context,
                "Cam card: where its figures come from",
                book.cardSource(),
                words -> keep(() -> book.cardSource(words))));
  }

  private void keep(java.util.function.Supplier<FigureOutcome> deed) {
    context.attempt(
        () -> {
          if (deed.get() instanceof FigureOutcome.Refused refused) {
            context.say(refused.sentence());
          }
        });
    context.navigator().changed();
  }

  private void card(Comparison each) {
    open(
        () ->
            NumberEntryScreen.signed(
                context,
                "Card: " + each.value().words(),
                "In degrees, as on the card. Events: after top dead center, minus before it."
                    + " After bottom dead center add 180.",
                typed -> keep(() -> book.card(each.value(), typed))));
  }

  @Override
  public String title() {
    return "Timing, cylinder " + cylinder;
  }

  @Override
  protected void refresh() {
    TimingCheck check = new TimingCheck(book);
    List<Region> lines = new ArrayList<>();
    for (String open : check.open(cylinder)) {
      lines.add(ListRow.told(context.touch(), "Still open", open));
    }
    for (Comparison each : check.compare(cylinder)) {
      String heading = Words.capital(each.value().words());
      String beside = each.card().isPresent() ? "Card: " + each.cardWords() + ". " : "";
      lines.add(
          ListRow.key(
              context.touch(),
              heading + ": " + each.foundWords(),
              List.of(beside + each.verdict()),
              () -> card(each)));
    }
    String source = book.cardSource().isEmpty() ? "not said yet" : book.cardSource();
    lines.add(
        ListRow.plain(
            context.touch(),
            "Card from: " + source,
            List.of(
                "At "
                    + check.atLift()
                    + ". The figure after ± is the standard uncertainty. Your engine's service"
                    + " information and cam card decide.")));
    rows.refill(lines);
  }
}
