package wherefrom.ui.part;

import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import wherefrom.drawing.DrawnAs;
import wherefrom.engine.Layout;
import wherefrom.parts.Place;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.drawn.KindShape;
import wherefrom.ui.drawn.PartShape;

/** The part large, what was found on it, and where it is. */
final class PartHead extends Region {
  private static final double LEAST_MM = 24;
  private static final double MOST_MM = 62;

  /** Beside a part of this size three lines find room. */
  private static final double THREE_LINES_MM = 40;

  /** With large letters all of it is said, or the part is not drawn. */
  private static final int WHOLE = 4;

  private final Region shape;
  private final FitText found;
  private final FitText where;
  private final double gap;

  /**
   * @param found the worst that was found, or what there is to say of it
   * @param where where it is
   * @param side of the part's square, in pixels, as far as it suits the glass
   */
  PartHead(Touch touch, Layout layout, Place home, String found, String where, double side) {
    Scale scale = touch.scale();
    gap = scale.gap();
    double suiting = Math.max(scale.px(LEAST_MM), Math.min(scale.px(MOST_MM), side));
    shape = shape(scale, layout, home, suiting);
    this.found = touch.heading(found).upTo(touch.isLarge() ? WHOLE : 2);
    int lines = suiting < scale.px(THREE_LINES_MM) ? 2 : 3;
    this.where = touch.small(where).upTo(touch.isLarge() ? WHOLE : lines);
    this.where.getStyleClass().add("second");
    getChildren().addAll(shape, this.found, this.where);
  }

  /** A lower shell lies as on the other drawings, open upward; all else as its kind. */
  private static Region shape(Scale scale, Layout layout, Place home, double side) {
    return PartShape.isLowerShell(home)
        ? new PartShape(scale, layout, home, side, DrawnAs.IN)
        : new KindShape(scale, layout, home.kind(), side, DrawnAs.IN);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  private double words(double width) {
    double inner = Math.max(1, width - shape.prefWidth(-1) - gap);
    return found.minHeight(inner) + where.minHeight(inner);
  }

  @Override
  protected double computeMinHeight(double width) {
    return Math.max(shape.prefHeight(-1), width <= 0 ? 0 : words(width));
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double wide = shape.prefWidth(-1);
    double high = shape.prefHeight(-1);
    shape.resizeRelocate(0, (getHeight() - high) / 2, wide, high);
    double inner = getWidth() - wide - gap;
    double low = where.minHeight(inner);
    double top = Math.min(getHeight() - low, found.prefHeight(inner));
    double y = (getHeight() - top - low) / 2;
    found.resizeRelocate(wide + gap, y, inner, top);
    where.resizeRelocate(wide + gap, y + top, inner, low);
  }
}
