package wherefrom.drawing;

import java.util.List;

/** The box round an outline: its corners and the outermost points of its curves. */
final class Extent implements PathStep.Pen<RuntimeException> {
  private double left = Double.POSITIVE_INFINITY;
  private double top = Double.POSITIVE_INFINITY;
  private double right = Double.NEGATIVE_INFINITY;
  private double bottom = Double.NEGATIVE_INFINITY;
  private double x;
  private double y;

  private Extent() {}

  static Bounds of(List<PathStep> steps) {
    Extent extent = new Extent();
    steps.forEach(step -> step.draw(extent));
    return Bounds.between(extent.left, extent.top, extent.right, extent.bottom);
  }

  @Override
  public void move(PathStep.Move move) {
    point(move.x(), move.y());
  }

  @Override
  public void line(PathStep.Line line) {
    point(line.x(), line.y());
  }

  @Override
  public void curve(PathStep.Curve curve) {
    across(x, curve.x1(), curve.x2(), curve.x());
    down(y, curve.y1(), curve.y2(), curve.y());
    point(curve.x(), curve.y());
  }

  /** Where it began was counted. */
  @Override
  public void close(PathStep.Close close) {}

  private void point(double newX, double newY) {
    x = newX;
    y = newY;
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }

  private void across(double a, double b, double c, double d) {
    for (double at : turns(a, b, c, d)) {
      double value = value(a, b, c, d, at);
      left = Math.min(left, value);
      right = Math.max(right, value);
    }
  }

  private void down(double a, double b, double c, double d) {
    for (double at : turns(a, b, c, d)) {
      double value = value(a, b, c, d, at);
      top = Math.min(top, value);
      bottom = Math.max(bottom, value);
    }
  }

  private static double value(double a, double b, double c, double d, double at) {
    double rest = 1 - at;
    return rest * rest * rest * a
        + 3 * rest * rest * at * b
        + 3 * rest * at * at * c
        + at * at * at * d;
  }

  /** Where the curve turns back along one axis: the derivative's zeros within the curve. */
  private static double[] turns(double a, double b, double c, double d) {
    double square = -a + 3 * b - 3 * c + d;
    double linear = 2 * (a - 2 * b + c);
    double constant = b - a;
    if (Math.abs(square) < 1e-12) {
      return within(Math.abs(linear) < 1e-12 ? -1 : -constant / linear, -1);
    }
    double root = Math.sqrt(Math.max(0, linear * linear - 4 * square * constant));
    return within((-linear + root) / (2 * square), (-linear - root) / (2 * square));
  }

  private static double[] within(double one, double two) {
    return new double[] {Math.min(1, Math.max(0, one)), Math.min(1, Math.max(0, two))};
  }
}
