package wherefrom.drawing;

/** One piece of an outline. */
public sealed interface Step {

  /** Begins at a point. */
  record Move(double x, double y) implements Step {}

  /** A straight line to a point. */
  record Line(double x, double y) implements Step {}

  /** A cubic Bezier curve to (x, y) with two handles. */
  record Curve(double x1, double y1, double x2, double y2, double x, double y) implements Step {}

  /** Back to where it began. */
  record Close() implements Step {}
}
