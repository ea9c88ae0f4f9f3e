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
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;

/** A part's face with its holes, each with its number; below it its bolt's length, if known. */
final class HoleMap extends Region {
  /** What lies nearer to a hole than this means the hole. */
  private static final double FINGER_MM = 8;

  private static final double HOLE_MM = 4.6;
  private static final double LEAST_MM = 46;
  private static final double WHOLE = 100;

  /** From the middle of a hole to the edge of the plate, in its radius. */
  private static final double EDGE = 1.3;

  /** What two holes beside each other leave between them, as a part of their distance. */
  private static final double APART = 0.46;

  /** A length as long as most. */
  private static final String USUAL = "3.75";

  /** A hole as it is drawn. */
  private record Drawn(BoltHole hole, Circle circle, FitText number, FitText length) {}

  private final Touch touch;
  private final Region plate = new Region();
  private final List<Drawn> drawn = new ArrayList<>();
  private final double usual;
  private int selected;
  private boolean lengths = true;

  private HoleMap(Touch touch) {
    this.touch = touch;
    usual = touch.small(USUAL).leastLineWidth();
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
    Circle circle = new Circle();
    circle.getStyleClass().add(hole.hole() == selected ? "hole-chosen" : "hole");
    circle.setMouseTransparent(true);
    FitText number = touch.number("" + hole.hole()).centred();
    number.getStyleClass().addAll("in-figure", hole.hole() == selected ? "hole-number" : "words");
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
    double edge = EDGE * radius();
    return percent(at.getX() - edge, getWidth() - 2 * edge);
  }

  /** How far down a point is, in percent. */
  int down(Point2D at) {
    double edge = EDGE * radius();
    return percent(at.getY() - edge, getHeight() - 2 * edge - low());
  }

  private static int percent(double at, double of) {
    return (int) Math.max(0, Math.min(WHOLE, Math.rint(WHOLE * at / Math.max(1, of))));
  }

  /** Holes grow with the person's text only as far as they do not lie on each other. */
  private double radius() {
    double least = touch.scale().px(HOLE_MM);
    double most = least * touch.scale().textFactor();
    double nearest = Double.MAX_VALUE;
    for (int one = 0; one < drawn.size(); one++) {
      for (int other = 0; other < one; other++) {
        Point2D at = middle(drawn.get(one).hole(), least);
        nearest = Math.min(nearest, at.distance(middle(drawn.get(other).hole(), least)));
      }
    }
    return Math.max(least, Math.min(most, APART * nearest));
  }

  /** What the lengths below the holes at the lower edge need; nothing where none are shown. */
  private double low() {
    return lengths ? touch.small("0").minHeight(-1) : 0;
  }

  private Point2D middle(BoltHole hole) {
    return middle(hole, radius());
  }

  private Point2D middle(BoltHole hole, double radius) {
    double edge = EDGE * radius;
    double wide = getWidth() - 2 * edge;
    double high = getHeight() - 2 * edge - low();
    return new Point2D(
        edge + hole.across().orElse(0) / WHOLE * wide, edge + hole.down().orElse(0) / WHOLE * high);
  }

  @Override
  protected void layoutChildren() {
    Panes.place(plate, 0, 0, getWidth(), getHeight());
    showLengths();
    double radius = radius();
    drawn.forEach(one -> one.circle().setRadius(radius));
    drawn.forEach(this::place);
  }

  /**
   * All lengths or, where large letters leave no room for one, none. Holes without a length yet
   * count too, so that none moves when its length comes.
   */
  private void showLengths() {
    lengths = true;
    double radius = radius();
    lengths = !touch.isLarge() || drawn.stream().allMatch(one -> isFree(one, radius));
  }

  private void place(Drawn one) {
    Point2D at = middle(one.hole());
    double radius = one.circle().getRadius();
    one.circle().setCenterX(at.getX());
    one.circle().setCenterY(at.getY());
    double wide = Math.max(2 * radius, one.number().leastLineWidth());
    double high = Math.max(2 * radius, one.number().minHeight(-1));
    Panes.place(one.number(), at.getX() - wide / 2, at.getY() - high / 2, wide, high);
    one.number().setVisible(isReadable(one));
    double below = one.length().leastLineWidth();
    double line = one.length().minHeight(-1);
    Panes.place(one.length(), at.getX() - below / 2, at.getY() + radius, below, line);
    one.length().setVisible(lengths && isFree(one, radius));
  }

  /** Of two holes on each other the later shows its number; the list says both. */
  private boolean isReadable(Drawn one) {
    double near = 1.8 * one.circle().getRadius();
    return drawn.subList(drawn.indexOf(one) + 1, drawn.size()).stream()
        .noneMatch(other -> middle(other.hole()).distance(middle(one.hole())) < near);
  }

  /** A length without a free place is left out: the list beside it says it. */
  private boolean isFree(Drawn one, double radius) {
    Point2D at = middle(one.hole());
    double wide = Math.max(usual, one.length().leastLineWidth());
    double bottom = at.getY() + radius + one.length().minHeight(-1);
    boolean inside = at.getX() - wide / 2 >= 0 && at.getX() + wide / 2 <= getWidth();
    return inside
        && bottom <= getHeight()
        && drawn.stream()
            .filter(other -> !other.equals(one))
            .map(other -> middle(other.hole()))
            .noneMatch(
                other ->
                    Math.abs(other.getX() - at.getX()) < wide / 2 + radius
                        && other.getY() > at.getY() - 1
                        && other.getY() - radius < bottom);
  }
}
