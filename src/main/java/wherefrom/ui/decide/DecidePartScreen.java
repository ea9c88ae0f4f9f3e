package wherefrom.ui.decide;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.inspection.Decision;
import wherefrom.text.Words;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Reasons;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.ScannedPart;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.TouchKey;

/** One part: what is proposed and why; the person presses one of three keys and says why. */
public final class DecidePartScreen implements Screen, Scannable {
  private final Desk desk;
  private final int item;
  private final boolean once;
  private final DecidePartModel model;
  private final Pager<DecidePartModel.Line> rows;
  private final Map<Decision, TouchKey> keys = new EnumMap<>(Decision.class);
  private final VBox view;

  /**
   * @param item the part's number, which must be one of the open job's
   */
  public DecidePartScreen(Desk desk, int item) {
    this(desk, item, false);
  }

  /** Goes back once it is decided, to where the decision was wanted. */
  public static DecidePartScreen once(Desk desk, int item) {
    return new DecidePartScreen(desk, item, true);
  }

  private DecidePartScreen(Desk desk, int item, boolean once) {
    this.desk = desk;
    this.once = once;
    this.item = item;
    model = new DecidePartModel(desk.getJob(), item);
    rows =
        Pager.list(desk.touch(), line -> ListRow.plain(desk.touch(), line.heading(), line.more()));
    for (Decision decision : Decision.values()) {
      String words = Words.capital(decision.word());
      keys.put(decision, desk.touch().primary(words, () -> ask(decision)));
    }
    Tiles three = Tiles.row(desk.scale(), keys.values().toArray(Node[]::new));
    TouchKey page = desk.touch().key("Its page", this::page);
    view = Panes.column(desk.scale(), rows, Panes.row(desk.scale(), Panes.grow(three), page));
  }

  @Override
  public String title() {
    return "Decide: " + model.title();
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    List<DecidePartModel.Line> lines = model.lines();
    rows.refill(lines);
    Optional<Decision> decided = model.decision();
    keys.forEach((decision, key) -> key.select(decided.equals(Optional.of(decision))));
  }

  @Override
  public void changed() {
    shown();
  }

  @Override
  public void scan(String text) {
    ScannedPart.find(desk, text, DecideScreen.WANTED)
        .ifPresent(
            other -> {
              desk.navigator().back();
              desk.navigator().open(() -> new DecidePartScreen(desk, other));
            });
  }

  private void page() {
    desk.navigator().show(ScreenId.PART, item);
  }

  private void ask(Decision decision) {
    String title = "Why " + decision.word() + " it?";
    Reasons.ask(desk, title, model.reasons(decision), words -> decide(decision, words));
  }

  private void decide(Decision decision, String reason) {
    boolean went = desk.attempt(() -> desk.say(model.decide(decision, reason)));
    boolean decided = went && model.decision().equals(Optional.of(decision));
    if (once && decided) {
      desk.navigator().back();
    }
    desk.navigator().changed();
  }
}
