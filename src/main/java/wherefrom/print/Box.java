package wherefrom.print;

/** A rectangle on paper in millimetres, from the top left corner; y grows downwards. */
record Box(double x, double y, double width, double height) {

  double right() {
    return x + width;
  }

  double bottom() {
    return y + height;
  }

  Box movedBy(double right, double down) {
    return new Box(x + right, y + down, width, height);
  }

  /** Whether another box lies inside this one, to a thousandth of a millimetre. */
  boolean contains(Box other) {
    double slack = 0.001;
    return other.x >= x - slack
        && other.y >= y - slack
        && other.right() <= right() + slack
        && other.bottom() <= bottom() + slack;
  }

  boolean overlaps(Box other) {
    return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
  }
}
