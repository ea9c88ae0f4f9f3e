package wherefrom.ui.torque;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.layout.Region;
import wherefrom.job.Caution;
import wherefrom.job.torque.KeptCard;
import wherefrom.job.torque.TorqueBook;
import wherefrom.job.torque.TorqueStep;
import wherefrom.text.UsualWords;
import wherefrom.text.Words;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ReasonAsking;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.workings.torque.TorqueCard;

/** What stands on a torque card: stages, threads, sources, the order to loosen in. */
public final class CardDetailsScreen extends Page {
  private static final UsualWords REASONS =
      UsualWords.orOther("bolts loosened again", "written wrong");

  private final int number;
  private final Pager<Region> rows;

  CardDetailsScreen(ScreenContext context, int number) {
    super(context, "");
    this.number = number;
    rows = Pager.list(context.touch(), row -> row);
    lay(
        Panes.column(
            context.scale(),
            rows,
            Tiles.row(context.scale(), touch().key("Drop the card", this::giveUp))));
  }

  private void giveUp() {
    ReasonAsking.ask(
        context,
        "Why does the card no longer hold?",
        REASONS,
        reason ->
            context.attempt(
                () -> {
                  TorqueStep step = new TorqueBook(context.getJob()).drop(number, reason);
                  if (step instanceof TorqueStep.Done done) {
                    context.navigator().back();
                    context.say(done.sentence());
                  }
                  context.navigator().changed();
                }));
  }

  @Override
  public String title() {
    return "Torque card " + number;
  }

  @Override
  protected void refresh() {
    new TorqueBook(context.getJob()).find(number).ifPresent(this::show);
  }

  private void show(KeptCard kept) {
    TorqueCard card = kept.card();
    List<Region> lines = new ArrayList<>();
    lines.add(row(Words.capital(card.spec().fastener()), kept.state()));
    lines.add(row("Caution", Caution.TORQUE.sentence(), Words.source(Caution.TORQUE.source())));
    lines.add(row("Threads", card.spec().threads()));
    for (int stage = 1; stage < card.checkStage(); stage++) {
      String words = card.spec().stages().get(stage - 1).words();
      lines.add(row("Stage " + stage + ", " + words, count(card, stage)));
    }
    lines.add(row("A second person's check", count(card, card.checkStage())));
    lines.add(row("Figures from", card.spec().source().text()));
    lines.add(row("Order from", card.spec().pattern().source().text()));
    lines.add(row("Loosen in reverse order", loosening(card)));
    rows.refill(lines);
  }

  private static String count(TorqueCard card, int stage) {
    return card.boltsDone(stage) + " of " + card.bolts() + " bolts";
  }

  private static String loosening(TorqueCard card) {
    return card.spec().pattern().loosening().stream()
        .map(bolt -> Integer.toString(bolt.number()))
        .collect(Collectors.joining(", "));
  }

  private Region row(String heading, String... words) {
    return ListRow.plain(context.touch(), heading, List.of(words));
  }
}
