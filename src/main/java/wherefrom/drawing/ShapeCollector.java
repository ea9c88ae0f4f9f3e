package wherefrom.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Collects shapes, each with the line that its role has. */
final class ShapeCollector {
  private final List<Shape> shapes = new ArrayList<>();
  private final double unit;

  /**
   * @param unit as {@link Glass#unit()}
   */
  ShapeCollector(double unit) {
    this.unit = unit;
  }

  ShapeCollector(Glass glass) {
    this(glass.unit());
  }

  List<Shape> shapes() {
    return List.copyOf(shapes);
  }

  int count() {
    return shapes.size();
  }

  /** The shapes that came after so many. */
  List<Shape> since(int count) {
    return List.copyOf(shapes.subList(count, shapes.size()));
  }

  void add(Shape shape) {
    shapes.add(shape);
  }

  void addAll(List<Shape> more) {
    shapes.addAll(more);
  }

  private double line(Role role) {
    return role.width() * unit;
  }

  void slab(double x, double y, double width, double height, double radius, Role role) {
    add(new Shape.Slab(new Bounds(x, y, width, height), radius, role, line(role)));
  }

  void slab(double x, double y, double width, double height, Role role) {
    slab(x, y, width, height, 0, role);
  }

  void disc(double x, double y, double radius, Role role) {
    add(new Shape.Disc(x, y, radius, role, line(role)));
  }

  void disc(Point at, double radius, Role role) {
    disc(at.x(), at.y(), radius, role);
  }

  void line(double x1, double y1, double x2, double y2, Role role) {
    outline(Pen.at(x1, y1).to(x2, y2), role);
  }

  void outline(Pen pen, Role role) {
    outline(pen, role, line(role));
  }

  void outline(Pen pen, Role role, double width) {
    add(new Shape.Outline(pen.steps(), role, width));
  }

  /**
   * A hexagon.
   *
   * @param turn in radians; 0 has a corner to the right
   */
  void hexagon(double x, double y, double radius, Role role, double turn) {
    outline(Pen.round(corners(6, x, y, radius, turn)), role);
  }

  void hexagon(double x, double y, double radius, Role role) {
    hexagon(x, y, radius, role, 0);
  }

  /** The corners of a regular figure. */
  static List<Point> corners(int count, double x, double y, double radius, double turn) {
    return IntStream.range(0, count)
        .mapToDouble(k -> turn + k * 2 * Math.PI / count)
        .mapToObj(at -> new Point(x + radius * Math.cos(at), y + radius * Math.sin(at)))
        .toList();
  }

  /** Bold words whose middle lies at a point. */
  void words(double x, double y, String text, double size, Role role) {
    add(new Shape.Words(x, y, text, size, true, Shape.Side.MIDDLE, role));
  }

  void words(double x, double y, String text, double size, Shape.Side side, Role role) {
    add(new Shape.Words(x, y, text, size, false, side, role));
  }
}
