package wherefrom.ui.app;

import javafx.geometry.Pos;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;

/** A bar, a count and a key that stops: long work beside the window. */
final class WorkBand extends HBox {
  private static final double BAR_MM = 60;

  private final LongWork work;
  private final ProgressBar bar = new ProgressBar(0);
  private final FitText words;

  WorkBand(LongWork work, Touch touch) {
    super(touch.scale().gap());
    this.work = work;
    words = Panes.grow(touch.text(""));
    bar.setPrefWidth(touch.scale().px(BAR_MM));
    bar.setMinWidth(0);
    bar.setFocusTraversable(false);
    setAlignment(Pos.CENTER_LEFT);
    getStyleClass().add("band");
    Panes.pad(this, 2, touch.scale());
    getChildren().addAll(bar, words, touch.key("Stop", this::stop));
    follow();
  }

  LongWork work() {
    return work;
  }

  private void stop() {
    work.stop();
    follow();
  }

  /** Shows how far it is now. */
  void follow() {
    bar.setProgress(work.part());
    words.setWords(work.words());
  }
}
