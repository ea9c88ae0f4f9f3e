package wherefrom.ui.part;

import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;

/** Two things beside each other, one below the other where the glass is narrow. */
final class Sideways extends Region {
  /** Beside each other only where the left one is about as wide as the right one. */
  private static final double LEAST = 1.9;

  private final Region left;
  private final Region right;
  private final double gap;
  private final double least;
  private double share;

  /**
   * @param rightMm how wide the right one is, in mm, unless it has a share that is more
   */
  Sideways(Scale scale, Region left, Region right, double rightMm) {
    this.left = left;
    this.right = right;
    this.gap = rightMm > 0 ? scale.gap() : 0;
    this.least = scale.px(rightMm);
    getChildren().setAll(left, right);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  /** One thing that has all the room. */
  static Sideways alone(Scale scale, Region one) {
    return new Sideways(scale, one, new Region(), 0);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  /** The right one has this part of the width where that is more. */
  Sideways sharing(double part) {
    share = part;
    return this;
  }

  private double wide(double width) {
    return Math.max(least, Math.floor(share * width));
  }

  private boolean isBeside(double width) {
    return width >= LEAST * least;
  }

  @Override
  protected double computeMinHeight(double width) {
    double other = right.minHeight(Math.min(width, wide(width)));
    return isBeside(width)
        ? Math.max(left.minHeight(width - gap - wide(width)), other)
        : left.minHeight(width) + gap + right.minHeight(width);
  }

  /** The height at which both show all that they have. */
  double likedHeight(double width) {
    double wide = wide(width);
    double other = right.prefHeight(isBeside(width) ? wide : width);
    double first = left.prefHeight(isBeside(width) ? width - gap - wide : width);
    return isBeside(width) ? Math.max(first, other) : first + gap + other;
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double height = getHeight();
    if (isBeside(width)) {
      double wide = wide(width);
      Panes.place(left, 0, 0, width - gap - wide, height);
      Panes.place(right, width - wide, 0, wide, height);
      return;
    }
    double low = Math.max(right.minHeight(width), Math.min(right.prefHeight(width), height / 2));
    Panes.place(left, 0, 0, width, Math.max(0, height - gap - low));
    Panes.place(right, 0, height - low, width, low);
  }
}
