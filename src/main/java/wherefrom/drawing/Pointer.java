package wherefrom.drawing;

/**
 * How a part is pointed at.
 *
 * @param at its middle
 * @param radius of a ring round it
 * @param arrow whether "here" is an arrow, because a ring would cover a number
 * @param tip where the arrow's tip is
 * @param from the direction that the arrow comes from, in radians; 0 is from the right, a quarter
 *     turn from below
 * @param length of the arrow
 */
public record Pointer(
    Point at, double radius, boolean arrow, Point tip, double from, double length) {

  static Pointer ring(Point at, double radius) {
    return new Pointer(at, radius, false, at, 0, 0);
  }

  static Pointer arrow(Point at, double radius, Point tip, double from, double length) {
    return new Pointer(at, radius, true, tip, from, length);
  }

  /** Arrow or ring, as it is here. */
  public java.util.List<Shape> here(Glass glass) {
    return arrow ? Pointing.arrow(tip, from, length, glass) : Pointing.ring(at, radius, glass);
  }
}
