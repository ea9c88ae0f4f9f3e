package wherefrom.ui.app;

import javafx.geometry.Pos;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;

/** A bar, a count and a key that stops: long work beside the window. */
final class WorkBand extends HBox {
  private static final double BAR_MM = 60;
  private static final double HIGH_MM = 9;

  private final LongWork work;
  private final ProgressBar bar = new ProgressBar(0);
  private final FitText words;
  private final TouchKey stop;

  WorkBand(LongWork work, Touch touch) {
    super(touch.scale().gap());
    this.work = work;
    words = Panes.grow(touch.text(""));
    bar.getStyleClass().add("work-bar");
    bar.setPrefSize(touch.scale().px(BAR_MM), touch.scale().px(HIGH_MM));
    bar.setMinWidth(0);
    bar.setFocusTraversable(false);
    setAlignment(Pos.CENTER_LEFT);
    getStyleClass().add("band");
    Panes.pad(this, 2, touch.scale());
    // As high as with its key, so that nothing moves when the key comes.
    setMinHeight(touch.scale().px(Scale.KEY_MM + 4));
    stop = touch.key("Stop", this::stop);
    getChildren().addAll(bar, words);
    follow();
  }

  LongWork work() {
    return work;
  }

  private void stop() {
    work.stop();
    follow();
  }

  /** Shows how far it is now. Work of one piece cannot be stopped within it. */
  void follow() {
    if (work.part() >= 0 && !getChildren().contains(stop)) {
      getChildren().add(stop);
    }
    bar.setProgress(work.part());
    words.setWords(work.words());
  }
}
