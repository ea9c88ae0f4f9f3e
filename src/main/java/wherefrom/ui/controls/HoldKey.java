package wherefrom.ui.controls;

import javafx.animation.KeyFrame;
import javafx.animation.KeyValue;
import javafx.animation.Timeline;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.util.Duration;

/** A key that acts only after it was held down; a bar shows how far the hold has come. */
final class HoldKey extends StackPane {
  static final Duration HOLD = Duration.millis(1500);

  private final Region bar = new Region();
  private final Timeline hold;

  HoldKey(Touch touch, TouchKey plate, Runnable act) {
    double thick = touch.scale().px(2.5);
    bar.getStyleClass().add("hold-bar");
    bar.setMinSize(0, 0);
    bar.setMouseTransparent(true);
    bar.setManaged(false);
    plate.setMouseTransparent(true);
    getChildren().addAll(plate, bar);
    getProperties().put(Touch.MARK, this);
    setFocusTraversable(false);
    setPickOnBounds(true);
    hold =
        new Timeline(
            new KeyFrame(Duration.ZERO, new KeyValue(bar.prefWidthProperty(), 0)),
            new KeyFrame(HOLD, new KeyValue(bar.prefWidthProperty(), 1)));
    bar.prefWidthProperty()
        .addListener(
            (value, before, now) ->
                bar.resizeRelocate(0, getHeight() - thick, getWidth() * now.doubleValue(), thick));
    hold.setOnFinished(
        event -> {
          release();
          act.run();
        });
    setOnMousePressed(event -> hold.playFromStart());
    setOnMouseReleased(event -> release());
    setOnMouseExited(event -> release());
  }

  private void release() {
    hold.stop();
    bar.resize(0, 0);
  }
}
