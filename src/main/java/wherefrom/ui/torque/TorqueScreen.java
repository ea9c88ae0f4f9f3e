package wherefrom.ui.torque;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import wherefrom.job.torque.KeptCard;
import wherefrom.job.torque.TorqueBook;
import wherefrom.text.Words;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;

/** The job's torque cards, and a new one. */
public final class TorqueScreen extends Page {
  private static final String NEW = "New torque card";

  private final Pager<Region> rows;
  private final TagKey tag;
  private Runnable first = this::fresh;

  public TorqueScreen(ScreenContext context) {
    super(context, "Torque cards");
    rows = Pager.list(context.touch(), row -> row);
    tag = tag(() -> first.run());
    lay(Panes.column(context.scale(), rows, tag));
  }

  private void fresh() {
    open(() -> new NewCardScreen(context));
  }

  @Override
  protected void refresh() {
    List<KeptCard> cards = new TorqueBook(context.getJob()).cards();
    List<Region> lines = new ArrayList<>();
    cards.stream().filter(KeptCard::holds).forEach(card -> lines.add(key(card)));
    cards.stream().filter(card -> !card.holds()).forEach(card -> lines.add(told(card)));
    if (cards.isEmpty()) {
      lines.add(
          ListRow.told(
              context.touch(),
              "No card yet",
              "A card leads through a set of bolts, stage by stage. Type the figures from"
                  + " your engine's service information. Wherefrom has no figures of its own."));
    }
    Optional<KeptCard> next =
        isWritten()
            ? Optional.empty()
            : cards.stream().filter(card -> card.holds() && !card.isDone()).findFirst();
    next.ifPresent(card -> lines.add(ListRow.key(touch(), NEW, List.of(), this::fresh)));
    rows.refill(lines);
    turn(next);
  }

  private boolean isWritten() {
    return context.kept().keepOfJob(DraftModel.class, DraftModel::new).isBegun();
  }

  /** What is begun comes first: the card that is being written, then the bolts. */
  private void turn(Optional<KeptCard> next) {
    first = next.<Runnable>map(card -> () -> open(card)).orElse(this::fresh);
    String fresh = isWritten() ? "Go on with the new card" : NEW;
    tag.setWords(next.map(card -> "Go on: card " + card.number()).orElse(fresh), "");
  }

  private void open(KeptCard card) {
    open(() -> new TorqueCardScreen(context, card.number()));
  }

  private Region key(KeptCard card) {
    return ListRow.key(
        context.touch(),
        name(card),
        List.of(context.touch().brief(card.state(), card.brief())),
        () -> open(card));
  }

  private Region told(KeptCard card) {
    return ListRow.plain(context.touch(), name(card), List.of(card.state()));
  }

  private static String name(KeptCard card) {
    return card.number() + ". " + Words.capital(card.card().spec().fastener());
  }
}
