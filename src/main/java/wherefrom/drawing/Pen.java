package wherefrom.drawing;

import java.util.ArrayList;
import java.util.List;

/** Draws an outline from point to point. */
final class Pen {
  private final List<PathStep> steps = new ArrayList<>();
  private double x;
  private double y;

  private Pen() {}

  static Pen at(double x, double y) {
    return new Pen().move(x, y);
  }

  /** The outline through these points, closed. */
  static Pen round(List<Point> points) {
    Pen pen = at(points.get(0).x(), points.get(0).y());
    points.stream().skip(1).forEach(point -> pen.to(point.x(), point.y()));
    return pen.close();
  }

  Pen move(double newX, double newY) {
    steps.add(new PathStep.Move(newX, newY));
    return here(newX, newY);
  }

  Pen to(double newX, double newY) {
    steps.add(new PathStep.Line(newX, newY));
    return here(newX, newY);
  }

  Pen toX(double newX) {
    return to(newX, y);
  }

  Pen toY(double newY) {
    return to(x, newY);
  }

  /** A curve with one handle. */
  Pen quad(double hx, double hy, double newX, double newY) {
    return cubic(
        x + (hx - x) * 2 / 3,
        y + (hy - y) * 2 / 3,
        newX + (hx - newX) * 2 / 3,
        newY + (hy - newY) * 2 / 3,
        newX,
        newY);
  }

  Pen cubic(double x1, double y1, double x2, double y2, double newX, double newY) {
    steps.add(new PathStep.Curve(x1, y1, x2, y2, newX, newY));
    return here(newX, newY);
  }

  /** A piece of an ellipse, at most half of it. */
  Pen arc(double rx, double ry, boolean clockwise, double newX, double newY) {
    steps.addAll(Arc.between(new Point(x, y), new Point(newX, newY), rx, ry, clockwise));
    return here(newX, newY);
  }

  Pen close() {
    steps.add(new PathStep.Close());
    return this;
  }

  List<PathStep> steps() {
    return List.copyOf(steps);
  }

  private Pen here(double newX, double newY) {
    x = newX;
    y = newY;
    return this;
  }
}
