package wherefrom.ui.controls;

import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;

/** A key that acts only after it was held down; a bar shows how far the hold has come. */
final class HoldKey extends StackPane {
  static final double HOLD_MILLIS = 1500;

  private final Region bar = new Region();
  private final double thick;
  private final Ticker ticker;
  private final Runnable act;
  private Optional<Ticker.Ticking> hold = Optional.empty();

  HoldKey(Touch touch, TouchKey plate, Ticker ticker, Runnable act) {
    this.ticker = ticker;
    this.act = act;
    thick = touch.scale().px(2.5);
    bar.getStyleClass().add("hold-bar");
    bar.setMinSize(0, 0);
    bar.setMouseTransparent(true);
    bar.setManaged(false);
    plate.setMouseTransparent(true);
    getChildren().addAll(plate, bar);
    getProperties().put(Touch.MARK, this);
    setFocusTraversable(false);
    setAccessibleRole(AccessibleRole.BUTTON);
    setAccessibleText(plate.words() + ", hold it down");
    setPickOnBounds(true);
    setOnMousePressed(event -> press());
    setOnMouseReleased(event -> release());
    setOnMouseExited(event -> release());
  }

  void press() {
    release();
    hold = Optional.of(ticker.follow(this::held));
  }

  private void held(double millis) {
    double part = Math.min(1, millis / HOLD_MILLIS);
    Panes.place(bar, 0, getHeight() - thick, getWidth() * part, thick);
    if (millis >= HOLD_MILLIS) {
      held();
    }
  }

  /** It was held long enough. */
  void held() {
    release();
    act.run();
  }

  void release() {
    hold.ifPresent(Ticker.Ticking::end);
    hold = Optional.empty();
    bar.resize(0, 0);
  }
}
