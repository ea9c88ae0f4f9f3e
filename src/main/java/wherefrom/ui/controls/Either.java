package wherefrom.ui.controls;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import wherefrom.drawing.Bounds;

/** Shows what suits the room that it gets; it is asked again when that changes. */
public final class Either extends Region {
  private final Function<Bounds, Region> choice;
  private Region shown = new Region();
  private Optional<DoubleUnaryOperator> needing = Optional.empty();
  private double width;
  private double height;

  /**
   * @param choice what to show in a room
   */
  public Either(Function<Bounds, Region> choice) {
    this.choice = choice;
    Panes.grow(this);
  }

  /** Keeps at least the height that this needs, whichever is shown. */
  public Either needing(Region least) {
    return needing(least::minHeight);
  }

  /** Keeps at least the height that this tells for a width, whichever is shown. */
  public Either needing(DoubleUnaryOperator least) {
    needing = Optional.of(least);
    return this;
  }

  /** Chooses anew when it is laid out next. */
  public void again() {
    width = 0;
    requestLayout();
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinHeight(double width) {
    return needing.map(least -> least.applyAsDouble(width)).orElse(0.0);
  }

  @Override
  protected void layoutChildren() {
    if (getWidth() <= 0 || getHeight() <= 0) {
      return;
    }
    if (getWidth() != width || getHeight() != height) {
      width = getWidth();
      height = getHeight();
      shown = choice.apply(new Bounds(0, 0, width, height));
      if (!getChildren().contains(shown)) {
        getChildren().setAll(shown);
        shown.applyCss();
      }
    }
    Panes.place(shown, 0, 0, getWidth(), getHeight());
  }
}
