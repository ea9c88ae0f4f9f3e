package wherefrom.ui.controls;

import java.util.List;
import javafx.scene.layout.Region;

/**
 * The field of a pad with the keys of its figure beside it; or below it, where they leave it too
 * little room for a figure.
 */
final class FieldRow extends Region {
  /** A figure of usual length. */
  private static final String FIGURE = "0.00000";

  private static final double ASIDE_MM = 3;

  private final Region field;
  private final List<Region> keys;
  private final double gap;
  private final double wanted;
  private boolean stacked;

  FieldRow(Touch touch, Region field, List<Region> keys) {
    this.field = field;
    this.keys = List.copyOf(keys);
    gap = touch.scale().gap();
    wanted =
        touch.fit(FIGURE, Scale.SMALL_MM, Scale.SMALL_MM, true).leastLineWidth()
            + touch.scale().px(ASIDE_MM);
    getChildren().add(field);
    getChildren().addAll(keys);
  }

  /** What the keys take of the width beside the field. */
  private double keysWide() {
    return keys.stream().mapToDouble(key -> gap + Math.ceil(key.prefWidth(-1))).sum();
  }

  /** Whether the keys leave the field too little room in such a width. */
  boolean isNarrow(double width) {
    return width - keysWide() < wanted;
  }

  /** What the keys take of the height where they stand below the field. */
  double below() {
    return gap + keysHigh();
  }

  private double keysHigh() {
    return keys.stream().mapToDouble(key -> Math.ceil(key.minHeight(-1))).max().orElse(0);
  }

  /** Puts the keys below the field, or beside it. */
  void stack(boolean below) {
    if (stacked != below) {
      stacked = below;
      requestLayout();
    }
  }

  @Override
  protected double computeMinWidth(double height) {
    return stacked ? wanted : field.minWidth(-1) + keysWide();
  }

  /** How high it is with the keys beside the field. */
  double level() {
    return Math.max(Math.ceil(field.minHeight(-1)), keysHigh());
  }

  @Override
  protected double computeMinHeight(double width) {
    return stacked ? level() + below() : level();
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double x = 0;
    double high = getHeight();
    if (stacked) {
      double first = high - below();
      Panes.place(field, 0, 0, getWidth(), first);
      double wide = (getWidth() - gap * (keys.size() - 1)) / keys.size();
      for (Region key : keys) {
        Panes.place(key, x, first + gap, wide, keysHigh());
        x += wide + gap;
      }
      return;
    }
    double wide = getWidth() - keysWide();
    Panes.place(field, 0, 0, wide, high);
    x = wide + gap;
    for (Region key : keys) {
      double own = Math.ceil(key.prefWidth(-1));
      Panes.place(key, x, 0, own, high);
      x += own + gap;
    }
  }
}
