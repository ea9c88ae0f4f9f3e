package wherefrom.ui.takeapart;

import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.drawing.Sign;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.drawn.SignMark;

/** For a moment after a scan: a tick, what came out in letters of a verdict, and its own keys. */
final class OutPanel extends VBox {
  /** Capitals of a verdict's lines. */
  private static final double LINE_MM = 10.7;

  private static final double TICK_MM = 15.6;
  private static final double APART_MM = 13.2;

  private final FitText words;
  private final TouchKey undo;

  /**
   * @param keys what can be done with the part
   * @param undo takes its coming out back; kept apart from the others
   */
  OutPanel(Touch touch, TouchKey undo, Node... keys) {
    super(touch.scale().gap() / 2);
    this.undo = undo;
    Scale scale = touch.scale();
    double factor = scale.textFactor();
    words =
        Panes.grow(touch.fit("", LINE_MM / factor, Scale.SMALL_MM, true).align(Pos.CENTER_LEFT));
    HBox line = new HBox(scale.gap(), tick(scale), words);
    line.setAlignment(Pos.CENTER_LEFT);
    VBox.setVgrow(line, Priority.ALWAYS);
    HBox own = Panes.grow(new HBox(scale.gap(), keys));
    for (Node key : keys) {
      HBox.setHgrow(key, Priority.ALWAYS);
    }
    HBox row = new HBox(scale.px(APART_MM), own, undo);
    getChildren().setAll(line, row);
    getStyleClass().add("out-panel");
    setPadding(new Insets(scale.px(3.4)));
  }

  private static Region tick(Scale scale) {
    double side = scale.px(TICK_MM);
    return new SignMark(scale, Sign.FITTED, side);
  }

  /**
   * Says what came out.
   *
   * @param canUndo whether that was the last step
   */
  void show(String part, boolean canUndo) {
    words.setWords("OUT " + part);
    undo.offer(canUndo);
  }
}
