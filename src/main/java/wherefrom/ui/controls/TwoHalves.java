package wherefrom.ui.controls;

import javafx.geometry.Orientation;
import javafx.scene.layout.Region;

/** Two things that matter alike: side by side on glass that lies, one above the other upright. */
public final class TwoHalves extends Region {
  private final Region first;
  private final Region second;
  private final double gap;

  public TwoHalves(Scale scale, Region first, Region second) {
    this.first = first;
    this.second = second;
    this.gap = scale.gap();
    getChildren().setAll(first, second);
    Panes.grow(this);
  }

  private double half(double all) {
    return Math.floor((all - gap) / 2);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    double widest = Math.max(first.minWidth(-1), second.minWidth(-1));
    return Panes.isUpright(this) ? widest : 2 * widest + gap;
  }

  @Override
  protected double computeMinHeight(double width) {
    double wide = width <= 0 || Panes.isUpright(this) ? width : half(width);
    double high = Math.max(first.minHeight(wide), second.minHeight(wide));
    return Panes.isUpright(this) ? 2 * high + gap : high;
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double height = getHeight();
    if (Panes.isUpright(this)) {
      double high = half(height);
      first.resizeRelocate(0, 0, width, high);
      second.resizeRelocate(0, height - high, width, high);
    } else {
      double wide = half(width);
      first.resizeRelocate(0, 0, wide, height);
      second.resizeRelocate(width - wide, 0, wide, height);
    }
  }
}
