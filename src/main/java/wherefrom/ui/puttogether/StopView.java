package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Insets;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.rules.WayOut;
import wherefrom.ui.controls.Answer;
import wherefrom.ui.controls.EngineDrawing;
import wherefrom.ui.controls.EngineSide;
import wherefrom.ui.controls.Fold;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.controls.VerdictCard;

/** A stop over the whole screen, with its ways out and nothing else. */
final class StopView extends VBox {
  private static final double APART_MM = 13.5;

  /** The ways out of a stop. */
  interface Ways {
    /** What led to the stop is seen to; then the same scan is judged again. */
    void deed(WayOut deed);

    /** The page of the part that is stopped. */
    void page();

    /** The wrong thing was scanned: the stop is taken back. */
    void takeBack();

    /** What stands in the way has been taken out. */
    void tookOut();

    /** The reason for fitting on purpose is to be chosen. */
    void chooseReason();

    /** Fitted here on purpose, for the reason that is chosen. */
    void onPurpose();
  }

  private final Touch touch;
  private final Ways ways;
  private final VerdictCard card;
  private final EngineDrawing drawing;

  StopView(Touch touch, PutTogetherModel model, Ways ways) {
    super(touch.scale().gap());
    this.touch = touch;
    this.ways = ways;
    card = new VerdictCard(touch);
    drawing = EngineDrawing.shown(touch, model.state().layout());
    Panes.grow(this);
  }

  void show(PutTogetherModel model) {
    Answer stop = model.answer();
    // The large lines say it all; what else there is to say stands where there is room for it.
    card.stop(stop.lines(), touch.isLarge() && !stop.lines().isEmpty() ? "" : stop.small());
    VBox words = Panes.column(touch.scale(), card, keys(model));
    words.setPadding(new Insets(0, 0, touch.scale().px(APART_MM) - touch.scale().gap(), 0));
    if (stop.lit().isEmpty()) {
      getChildren().setAll(Panes.grow(words));
      return;
    }
    drawing.show(EngineSide.of(model.kind()), model::stateAt);
    drawing.light(stop.lit());
    getChildren().setAll(new Fold(touch, words, drawing));
  }

  /** What leads out of the stop: a deed, or else another scan. */
  private TouchKey first(PutTogetherModel model) {
    WayOut first = model.stopped().first();
    return touch.primary(first.words(), () -> ways.deed(first));
  }

  private HBox keys(PutTogetherModel model) {
    List<Region> keys = new ArrayList<>();
    keys.add(first(model));
    keys.add(touch.danger(touch.brief("I scanned the wrong one", "Wrong scan"), ways::takeBack));
    if (model.stopped().canTakeOut()) {
      String out = model.stopped().isFittedBut() ? "Take it out" : "It is taken out there";
      keys.add(touch.primary(touch.brief(out, "Taken out"), ways::tookOut));
    }
    if (model.canFitOnPurpose()) {
      if (!touch.isLarge() || model.reason().isEmpty()) {
        String whole =
            model.stopped().isFittedBut() ? "Leave it, with a reason" : "Fit it here on purpose";
        String brief = model.stopped().isFittedBut() ? "Leave it" : "On purpose";
        keys.add(touch.primary(touch.brief(whole, brief), ways::chooseReason));
      }
      model.reason().ifPresent(words -> keys.add(touch.hold("Hold: " + words, ways::onPurpose)));
    }
    boolean led = model.stopped().first() != WayOut.PAGE;
    if (model.stopped().isFittedBut() && led && !touch.isLarge()) {
      keys.add(touch.primary("Its page", ways::page));
    }
    HBox row = new HBox(touch.scale().px(APART_MM));
    keys.forEach(key -> row.getChildren().add(Panes.grow(key)));
    return row;
  }
}
