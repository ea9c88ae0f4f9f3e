package wherefrom.drawing;

/** A box with upright sides, in the drawing's unit, from its upper left corner. */
public record Bounds(double x, double y, double width, double height) {

  /** The box with these four sides. */
  public static Bounds between(double left, double top, double right, double bottom) {
    return new Bounds(left, top, right - left, bottom - top);
  }

  public double right() {
    return x + width;
  }

  public double bottom() {
    return y + height;
  }

  public double middleX() {
    return x + width / 2;
  }

  public double middleY() {
    return y + height / 2;
  }

  /** This box, larger by a margin on each side. */
  public Bounds grown(double margin) {
    return new Bounds(x - margin, y - margin, width + 2 * margin, height + 2 * margin);
  }

  /** Whether another box lies in this one. */
  public boolean holds(Bounds other) {
    return other.x >= x && other.y >= y && other.right() <= right() && other.bottom() <= bottom();
  }

  /** How far apart two boxes are, along x or y, whichever is more; negative where they overlap. */
  public double gapTo(Bounds other) {
    double across = Math.max(other.x - right(), x - other.right());
    double down = Math.max(other.y - bottom(), y - other.bottom());
    return Math.max(across, down);
  }

  /** The smallest box that holds both. */
  public Bounds with(Bounds other) {
    return between(
        Math.min(x, other.x),
        Math.min(y, other.y),
        Math.max(right(), other.right()),
        Math.max(bottom(), other.bottom()));
  }
}
