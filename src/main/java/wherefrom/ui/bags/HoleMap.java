package wherefrom.ui.bags;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import wherefrom.job.entry.BoltHole;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;

/** A part's face with its holes, each with its number; below it its bolt's length, if known. */
final class HoleMap extends Region {
  /** What lies nearer to a hole than this means the hole. */
  private static final double FINGER_MM = 8;

  private static final double HOLE_MM = 4.6;
  private static final double LEAST_MM = 46;
  private static final double WHOLE = 100;

  /** A hole as it is drawn. */
  private record Drawn(BoltHole hole, Circle circle, FitText number, FitText length) {}

  private final Touch touch;
  private final Region plate = new Region();
  private final List<Drawn> drawn = new ArrayList<>();
  private int selected;

  private HoleMap(Touch touch) {
    this.touch = touch;
    plate.getStyleClass().add("hole-plate");
    plate.setMouseTransparent(true);
    getChildren().add(plate);
    setMinSize(touch.scale().px(LEAST_MM), touch.scale().px(LEAST_MM));
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  /** One that is dead to touch. */
  static HoleMap shown(Touch touch, List<BoltHole> holes) {
    HoleMap map = new HoleMap(touch);
    map.show(holes, 0);
    return map;
  }

  /**
   * One that is tapped.
   *
   * @param tapped told of the point; of none where no finger pressed it
   */
  static HoleMap keyed(Touch touch, Consumer<Optional<Point2D>> tapped) {
    HoleMap map = touch.surface(new HoleMap(touch), tapped);
    map.setAccessibleRole(AccessibleRole.BUTTON);
    map.setAccessibleText("the holes: tap where one is");
    return map;
  }

  /**
   * Shows holes; those that have no place are left out.
   *
   * @param chosen the number of the one that is meant; 0 for none
   */
  void show(List<BoltHole> holes, int chosen) {
    selected = chosen;
    drawn.clear();
    getChildren().setAll(plate);
    holes.stream().filter(hole -> hole.across().isPresent()).forEach(this::draw);
    requestLayout();
  }

  private void draw(BoltHole hole) {
    Scale scale = touch.scale();
    Circle circle = new Circle(scale.px(HOLE_MM) * scale.textFactor());
    circle.getStyleClass().add(hole.hole() == selected ? "hole-chosen" : "hole");
    circle.setMouseTransparent(true);
    FitText number = touch.fit("" + hole.hole(), Scale.SMALL_MM, Scale.SMALL_MM, true).centred();
    number.getStyleClass().add(hole.hole() == selected ? "hole-number" : "words");
    FitText length =
        touch.small(hole.length().map(one -> one.number().toPlainString()).orElse("")).centred();
    drawn.add(new Drawn(hole, circle, number, length));
    getChildren().addAll(circle, number, length);
  }

  /** The number of the hole at a point; empty where there is none. */
  Optional<Integer> find(Point2D at) {
    double near = touch.scale().px(FINGER_MM);
    return drawn.stream()
        .min(Comparator.comparingDouble(one -> at.distance(middle(one.hole()))))
        .filter(one -> at.distance(middle(one.hole())) <= near)
        .map(one -> one.hole().hole());
  }

  /** How far across a point is, in percent. */
  int across(Point2D at) {
    return percent(at.getX() - radius(), getWidth() - 2 * radius());
  }

  /** How far down a point is, in percent. */
  int down(Point2D at) {
    return percent(at.getY() - radius(), getHeight() - 2 * radius() - low());
  }

  private static int percent(double at, double of) {
    return (int) Math.max(0, Math.min(WHOLE, Math.rint(WHOLE * at / Math.max(1, of))));
  }

  private double radius() {
    return 1.3 * touch.scale().px(HOLE_MM) * touch.scale().textFactor();
  }

  /** What the length below a hole at the lower edge needs. */
  private double low() {
    return touch.small("0").minHeight(-1);
  }

  private Point2D middle(BoltHole hole) {
    double wide = getWidth() - 2 * radius();
    double high = getHeight() - 2 * radius() - low();
    return new Point2D(
        radius() + hole.across().orElse(0) / WHOLE * wide,
        radius() + hole.down().orElse(0) / WHOLE * high);
  }

  @Override
  protected void layoutChildren() {
    plate.resizeRelocate(0, 0, getWidth(), getHeight());
    drawn.forEach(this::place);
  }

  private void place(Drawn one) {
    Point2D at = middle(one.hole());
    double radius = one.circle().getRadius();
    one.circle().setCenterX(at.getX());
    one.circle().setCenterY(at.getY());
    double wide = one.number().leastLineWidth();
    double high = one.number().minHeight(-1);
    one.number().resizeRelocate(at.getX() - wide / 2, at.getY() - high / 2, wide, high);
    one.number().setVisible(isReadable(one));
    double below = one.length().leastLineWidth();
    double top = at.getY() + radius;
    one.length().resizeRelocate(at.getX() - below / 2, top, below, low());
    one.length().setVisible(isFree(one, below, top));
  }

  /** Of two holes on each other the later shows its number; the list says both. */
  private boolean isReadable(Drawn one) {
    double near = 1.8 * one.circle().getRadius();
    return drawn.subList(drawn.indexOf(one) + 1, drawn.size()).stream()
        .noneMatch(other -> middle(other.hole()).distance(middle(one.hole())) < near);
  }

  /** A length without a free place is left out: the list beside it says it. */
  private boolean isFree(Drawn one, double wide, double top) {
    Point2D at = middle(one.hole());
    boolean inside = at.getX() - wide / 2 >= 0 && at.getX() + wide / 2 <= getWidth();
    return inside
        && drawn.stream()
            .filter(other -> !other.equals(one))
            .map(other -> middle(other.hole()))
            .noneMatch(
                other ->
                    Math.abs(other.getX() - at.getX()) < wide / 2 + one.circle().getRadius()
                        && other.getY() > at.getY() - 1
                        && other.getY() - one.circle().getRadius() < top + low());
  }
}
