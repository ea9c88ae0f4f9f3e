package wherefrom.ui.bags;

import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import wherefrom.engine.Layout;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.drawn.BigPartShape;
import wherefrom.ui.drawn.SignMark;

/** A plate for a big part: its outline, dashed where it is off, its mark and its name. */
final class BigPartKey extends Region {
  private static final double PAD_MM = 1.6;
  private static final double SHAPE_MM = 20;
  private static final double WIDE_MM = 35;

  private final BigPartShape shape;
  private final SignMark mark;
  private final FitText name;
  private final double pad;
  private final double least;

  private BigPartKey(Touch touch, Layout layout, BigPartRecord part) {
    Scale scale = touch.scale();
    pad = scale.px(PAD_MM);
    least = scale.px(WIDE_MM);
    shape = new BigPartShape(scale, layout, part.part().name(), scale.px(SHAPE_MM), part.where());
    mark = new SignMark(scale, BigPartShape.sign(part.where()));
    name = touch.fit(part.words(), Scale.SMALL_MM, Scale.SMALL_MM, true).centred();
    getStyleClass().addAll("key", "plain");
    getChildren().addAll(shape, mark, name);
    setAccessibleRole(AccessibleRole.BUTTON);
    setAccessibleText(part.words() + ", " + part.where().words());
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  static BigPartKey of(Touch touch, Layout layout, BigPartRecord part, Runnable act) {
    return touch.target(new BigPartKey(touch, layout, part), act);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  private double inner(double width) {
    return Math.max(1, width - 2 * pad);
  }

  private double top() {
    return Math.max(shape.prefHeight(-1), mark.prefHeight(-1));
  }

  private double across() {
    return mark.prefWidth(-1) + pad + shape.prefWidth(-1);
  }

  @Override
  protected double computeMinWidth(double height) {
    return Math.max(least, Math.max(name.minWidth(-1), across()) + 2 * pad);
  }

  @Override
  protected double computePrefWidth(double height) {
    return computeMinWidth(height);
  }

  @Override
  protected double computeMinHeight(double width) {
    double wide = width <= 0 ? computeMinWidth(-1) : width;
    return Math.ceil(top() + name.minHeight(inner(wide)) + 3 * pad);
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double low = name.minHeight(inner(getWidth()));
    double middle = pad + (getHeight() - low - 3 * pad) / 2;
    mark.autosize();
    mark.relocate(pad, middle - mark.prefHeight(-1) / 2);
    double left = 2 * pad + mark.prefWidth(-1);
    double free = getWidth() - left - pad;
    Panes.place(
        shape,
        left + (free - shape.prefWidth(-1)) / 2,
        middle - shape.prefHeight(-1) / 2,
        shape.prefWidth(-1),
        shape.prefHeight(-1));
    Panes.place(name, pad, getHeight() - pad - low, inner(getWidth()), low);
  }
}
