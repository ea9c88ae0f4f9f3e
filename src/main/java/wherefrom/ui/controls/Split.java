package wherefrom.ui.controls;

import javafx.geometry.Orientation;
import javafx.scene.layout.Region;

/**
 * Two parts of a screen: side by side where the room is wider than it is high, one above the other
 * where it is not. The second has the width, or the height, that it likes; the first has the rest.
 */
public final class Split extends Region {
  private final Region first;
  private final Region second;
  private final double gap;

  public Split(Scale scale, Region first, Region second) {
    this.first = first;
    this.second = second;
    this.gap = scale.gap();
    getChildren().setAll(first, second);
    Panes.grow(this);
  }

  /** Whether both stand side by side in a room of this width. */
  private boolean beside(double width, double height) {
    return width > height || width < 0;
  }

  private double secondWidth(double width) {
    double liked = Math.max(second.minWidth(-1), Math.min(second.prefWidth(-1), width / 3));
    return Math.ceil(liked);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return Math.max(first.minWidth(-1), second.minWidth(-1));
  }

  /** The less of the two ways to stand. */
  @Override
  protected double computeMinHeight(double width) {
    if (width <= 0) {
      return Math.max(first.minHeight(-1), second.minHeight(-1));
    }
    double above = first.minHeight(width) + gap + second.minHeight(width);
    double right = secondWidth(width);
    double left = width - gap - right;
    if (left < first.minWidth(-1)) {
      return above;
    }
    return Math.min(above, Math.max(first.minHeight(left), second.minHeight(right)));
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double height = getHeight();
    double right = secondWidth(width);
    double left = width - gap - right;
    boolean low = first.minHeight(width) + gap + second.minHeight(width) > height;
    if ((beside(width, height) || low) && left >= first.minWidth(-1)) {
      Panes.place(first, 0, 0, left, height);
      Panes.place(second, left + gap, 0, right, height);
      return;
    }
    double below = Math.ceil(Math.min(second.prefHeight(width), height / 2));
    below = Math.min(below, Math.floor(height - gap - first.minHeight(width)));
    below = Math.max(below, Math.ceil(second.minHeight(width)));
    Panes.place(first, 0, 0, width, Math.max(0, height - gap - below));
    Panes.place(second, 0, height - below, width, below);
  }
}
