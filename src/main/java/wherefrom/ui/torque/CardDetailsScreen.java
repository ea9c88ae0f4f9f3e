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
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ReasonAsking;
import wherefrom.ui.app.ScreenContext;
import wherefrom.workings.torque.TorqueCard;

/** What stands on a torque card: stages, threads, sources, the order to loosen in. */
public final class CardDetailsScreen extends ListPage {
  private static final UsualWords REASONS =
      UsualWords.orOther("bolts loosened again", "written wrong");

  private final int number;

  CardDetailsScreen(ScreenContext context, int number) {
    super(context, "");
    this.number = number;
    layOut(touch().key("Drop the card", this::giveUp));
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
  protected List<Region> rows() {
    return new TorqueBook(context.getJob()).find(number).map(this::rows).orElse(List.of());
  }

  private List<Region> rows(KeptCard kept) {
    TorqueCard card = kept.card();
    List<Region> rows =
        new ArrayList<>(
            List.of(
                told(
                    Words.capital(card.spec().fastener()),
                    touch().brief(kept.state(), kept.brief()))));
    rows.add(told("Threads", card.spec().threads()));
    for (int stage = 1; stage < card.checkStage(); stage++) {
      String words = card.spec().stages().get(stage - 1).words();
      rows.add(told("Stage " + stage + ", " + words, count(card, stage)));
    }
    rows.add(told("A second person's check", count(card, card.checkStage())));
    rows.add(told("Caution", Caution.TORQUE.sourced()));
    rows.add(told("Source of the figures", card.spec().source().text()));
    rows.add(told("Source of the order", card.spec().pattern().source().text()));
    rows.add(told("Loosen in reverse order", loosening(card)));
    return rows;
  }

  private static String count(TorqueCard card, int stage) {
    return card.boltsDone(stage) + " of " + card.bolts() + " bolts";
  }

  private static String loosening(TorqueCard card) {
    return card.spec().pattern().loosening().stream()
        .map(bolt -> Integer.toString(bolt.number()))
        .collect(Collectors.joining(", "));
  }
}
