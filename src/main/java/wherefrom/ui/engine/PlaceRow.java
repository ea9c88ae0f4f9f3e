package wherefrom.ui.engine;

import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.PartState;
import wherefrom.engine.Layout;
import wherefrom.parts.Place;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.drawn.KindShape;
import wherefrom.ui.drawn.SignMark;

/** A row of a list: the part's shape, its place, how it stands, its mark. */
final class PlaceRow extends Region {
  private static final double SHAPE_MM = 11.5;
  private static final double RING_MM = 6.6;
  private static final double RING_LINE_MM = 1;

  private final KindShape shape;
  private final Circle ring;
  private final FitText name;
  private final FitText more;
  private final SignMark mark;
  private final double pad;
  private final double least;

  private PlaceRow(
      Touch touch, Layout layout, Place place, String words, PartState state, boolean ringed) {
    Scale scale = touch.scale();
    pad = scale.px(2.2);
    least = scale.px(Scale.KEY_MM);
    shape = new KindShape(scale, layout, place.kind(), scale.px(SHAPE_MM), DrawnAs.IN);
    name = touch.fit(words, Scale.SMALL_MM, Scale.SMALL_MM, true);
    more = touch.small(state.words());
    more.getStyleClass().add("second");
    mark = new SignMark(scale, state.sign());
    getStyleClass().addAll("key", "plain");
    getChildren().addAll(shape, name, more, mark);
    ring = new Circle(scale.px(RING_MM));
    ring.setStrokeWidth(scale.px(RING_LINE_MM));
    ring.getStyleClass().add("drawn-ring");
    ring.setManaged(false);
    if (ringed) {
      getChildren().add(ring);
    }
    setAccessibleRole(AccessibleRole.BUTTON);
    setAccessibleText(words + ", " + state.words() + (ringed ? ", tapped" : ""));
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  /**
   * A row.
   *
   * @param ringed whether it is the one that was meant, as on the drawing
   */
  static PlaceRow of(
      Touch touch,
      Layout layout,
      Place place,
      String words,
      PartState state,
      boolean ringed,
      Runnable act) {
    return touch.target(new PlaceRow(touch, layout, place, words, state, ringed), act);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  private double left() {
    return 2 * pad + shape.prefWidth(-1);
  }

  private double inner(double width) {
    return width - left() - mark.prefWidth(-1) - 2 * pad;
  }

  @Override
  protected double computeMinWidth(double height) {
    double widest = Math.max(name.minWidth(-1), more.minWidth(-1));
    return left() + widest + mark.prefWidth(-1) + 2 * pad;
  }

  @Override
  protected double computePrefWidth(double height) {
    return computeMinWidth(height);
  }

  @Override
  protected double computeMinHeight(double width) {
    double inner = width <= 0 ? name.prefWidth(-1) : inner(width);
    return Math.max(least, name.minHeight(inner) + more.minHeight(inner) + 2 * pad);
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double inner = inner(getWidth());
    double first = name.minHeight(inner);
    double second = more.minHeight(inner);
    double y = (getHeight() - first - second) / 2;
    shape.autosize();
    shape.relocate(pad, (getHeight() - shape.prefHeight(-1)) / 2);
    ring.setCenterX(pad + shape.prefWidth(-1) / 2);
    ring.setCenterY(getHeight() / 2);
    Panes.place(name, left(), y, inner, first);
    Panes.place(more, left(), y + first, inner, second);
    mark.autosize();
    mark.relocate(getWidth() - pad - mark.prefWidth(-1), (getHeight() - mark.prefHeight(-1)) / 2);
  }
}
