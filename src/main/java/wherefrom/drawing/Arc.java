package wherefrom.drawing;

import java.util.ArrayList;
import java.util.List;

/** A piece of an ellipse with upright axes, as Bezier curves; never more than half of it. */
final class Arc {
  private Arc() {}

  /**
   * The curves from one point to another.
   *
   * @param clockwise on paper, where y runs down
   */
  static List<PathStep.Curve> between(
      Point from, Point to, double rx, double ry, boolean clockwise) {
    double ax = from.x() / rx;
    double ay = from.y() / ry;
    double hx = (ax - to.x() / rx) / 2;
    double hy = (ay - to.y() / ry) / 2;
    double half = Math.hypot(hx, hy);
    double radius = Math.max(1, half);
    double away = Math.sqrt(Math.max(0, radius * radius - half * half)) / half;
    double side = clockwise ? away : -away;
    double cx = ax - hx + side * hy;
    double cy = ay - hy - side * hx;
    double begin = Math.atan2(ay - cy, ax - cx);
    double end = Math.atan2(to.y() / ry - cy, to.x() / rx - cx);
    double turn = turn(end - begin, clockwise);
    return curves(new Point(cx * rx, cy * ry), radius * rx, radius * ry, begin, turn);
  }

  private static double turn(double angle, boolean clockwise) {
    if (clockwise) {
      return angle < 0 ? angle + 2 * Math.PI : angle;
    }
    return angle > 0 ? angle - 2 * Math.PI : angle;
  }

  private static List<PathStep.Curve> curves(
      Point middle, double rx, double ry, double begin, double turn) {
    int pieces = (int) Math.max(1, Math.ceil(Math.abs(turn) / (Math.PI / 2) - 1e-9));
    double step = turn / pieces;
    double handle = 4.0 / 3 * Math.tan(step / 4);
    List<PathStep.Curve> curves = new ArrayList<>();
    for (int piece = 0; piece < pieces; piece++) {
      double a = begin + piece * step;
      double b = a + step;
      curves.add(
          new PathStep.Curve(
              middle.x() + rx * (Math.cos(a) - handle * Math.sin(a)),
              middle.y() + ry * (Math.sin(a) + handle * Math.cos(a)),
              middle.x() + rx * (Math.cos(b) + handle * Math.sin(b)),
              middle.y() + ry * (Math.sin(b) - handle * Math.cos(b)),
              middle.x() + rx * Math.cos(b),
              middle.y() + ry * Math.sin(b)));
    }
    return curves;
  }
}
