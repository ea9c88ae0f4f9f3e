package wherefrom.ui.part;

import java.util.Optional;
import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import wherefrom.drawing.DrawnAs;
import wherefrom.engine.Layout;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.drawn.KindShape;
import wherefrom.ui.drawn.LevelPushrod;
import wherefrom.ui.drawn.PartShape;

/**
 * The part large, what was found on it, and where it is; a pushrod lies level above the words, its
 * top end marked.
 */
final class PartHead extends Region {
  private static final double LEAST_MM = 24;
  private static final double MOST_MM = 110;

  /** Beside a part of this size three lines find room. */
  private static final double THREE_LINES_MM = 40;

  /** With large letters all of it is said, or the part is not drawn. */
  private static final int WHOLE = 4;

  private final Region shape;
  private final Optional<FitText> top;
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
    boolean level = home.kind() == PartKind.PUSHROD;
    shape = level ? new LevelPushrod(scale) : shape(scale, layout, home, suiting);
    top =
        level
            ? Optional.of(touch.fit("TOP", Scale.SMALL_MM, Scale.SMALL_MM, true))
            : Optional.empty();
    this.found = touch.heading(found).upTo(touch.isLarge() ? WHOLE : 3);
    int lines = suiting < scale.px(THREE_LINES_MM) ? 2 : 3;
    this.where = touch.small(where).upTo(touch.isLarge() ? WHOLE : lines);
    this.where.getStyleClass().add("second");
    getChildren().addAll(shape, this.found, this.where);
    top.ifPresent(getChildren()::add);
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

  /** What stands at the left of the words. */
  private double aside() {
    return gap + top.map(FitText::leastLineWidth).orElseGet(() -> shape.prefWidth(-1));
  }

  private double words(double width) {
    double inner = Math.max(1, width - aside());
    return found.minHeight(inner) + where.minHeight(inner);
  }

  @Override
  protected double computeMinHeight(double width) {
    double words = width <= 0 ? 0 : words(width);
    double high = shape.prefHeight(-1);
    return top.isPresent() ? high + words : Math.max(high, words);
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double high = shape.prefHeight(-1);
    double from = top.isPresent() ? high : 0;
    double inner = getWidth() - aside();
    double low = where.minHeight(inner);
    double upper = Math.min(getHeight() - from - low, found.prefHeight(inner));
    double y = from + Math.max(0, getHeight() - from - upper - low) / 2;
    if (top.isPresent()) {
      Panes.place(shape, 0, 0, getWidth(), high);
      Panes.place(top.get(), 0, high, aside() - gap, top.get().minHeight(-1));
      y = from;
    } else {
      Panes.place(shape, 0, (getHeight() - high) / 2, shape.prefWidth(-1), high);
    }
    Panes.place(found, aside(), y, inner, upper);
    Panes.place(where, aside(), y + upper, inner, low);
  }
}
