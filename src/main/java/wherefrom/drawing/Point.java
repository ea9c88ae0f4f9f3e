package wherefrom.drawing;

/** A point of a drawing, in the drawing's unit; x runs to the right, y down. */
public record Point(double x, double y) {

  /** How far it is to another. */
  double distance(Point other) {
    return Math.hypot(x - other.x, y - other.y);
  }
}
