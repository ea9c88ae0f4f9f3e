package wherefrom.ui.controls;

import javafx.geometry.Orientation;
import javafx.scene.layout.Region;

/**
 * Two things that matter alike: side by side on glass that lies, one above the other upright. Each
 * has half of the room, or more where it needs more and the other does not need its half.
 */
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

  /** What the first has of the room: half, if neither of the two needs more than that. */
  private double share(double all, double firstLeast, double secondLeast) {
    double half = Math.floor((all - gap) / 2);
    double left = Math.floor(Math.min(half, all - gap - secondLeast));
    return Math.max(Math.ceil(firstLeast), left);
  }

  private double firstWidth(double width) {
    return share(width, first.minWidth(-1), second.minWidth(-1));
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    double left = first.minWidth(-1);
    double right = second.minWidth(-1);
    return Panes.isUpright(this) ? Math.max(left, right) : Math.ceil(left) + gap + right;
  }

  @Override
  protected double computeMinHeight(double width) {
    if (Panes.isUpright(this)) {
      return Math.ceil(first.minHeight(width)) + gap + second.minHeight(width);
    }
    double left = width <= 0 ? width : firstWidth(width);
    double right = width <= 0 ? width : width - gap - left;
    return Math.max(first.minHeight(left), second.minHeight(right));
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
      double high = share(height, first.minHeight(width), second.minHeight(width));
      Panes.place(first, 0, 0, width, high);
      Panes.place(second, 0, high + gap, width, Math.max(0, height - gap - high));
    } else {
      double wide = firstWidth(width);
      Panes.place(first, 0, 0, wide, height);
      Panes.place(second, wide + gap, 0, Math.max(0, width - gap - wide), height);
    }
  }
}
