package wherefrom.ui.takeapart;

import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import wherefrom.drawing.Sign;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.drawn.SignMark;

/** What came out last, with a tick, in letters of a verdict; it stands until the next deed. */
final class OutPanel extends HBox {
  /** Capitals of a verdict's lines. */
  private static final double LINE_MM = 10.7;

  private static final double TICK_MM = 12;
  private static final double PAD_MM = 2.2;

  private final FitText words;

  OutPanel(Touch touch) {
    super(touch.scale().gap());
    Scale scale = touch.scale();
    double factor = scale.textFactor();
    words =
        Panes.grow(touch.fit("", LINE_MM / factor, Scale.SMALL_MM, true).align(Pos.CENTER_LEFT));
    setAlignment(Pos.CENTER_LEFT);
    setPadding(new Insets(scale.px(PAD_MM)));
    getStyleClass().add("out-panel");
    getChildren().setAll(new SignMark(scale, Sign.FITTED, scale.px(TICK_MM)), words);
  }

  /** Says what came out: {@code OUT 3 EX pushrod}. */
  void show(String told) {
    words.setWords(told);
  }
}
