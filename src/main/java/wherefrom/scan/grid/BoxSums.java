package wherefrom.scan.grid;

/** Sums over the square around each place of a square field, as far as it lies within. */
final class BoxSums {
  private final int side;
  private final int reach;
  private final float[] across;
  private final float[] places;

  /**
   * @param side places along a side of the field
   * @param reach places from the middle of a square to its edge, less than the side
   */
  BoxSums(int side, int reach) {
    this.side = side;
    this.reach = reach;
    across = new float[side * side];
    places = new float[side * side];
    float[] ones = new float[side * side];
    java.util.Arrays.fill(ones, 1);
    sum(ones, places);
  }

  /** How many places of the field the square around one holds. */
  float places(int at) {
    return places[at];
  }

  /** Along the rows, then along the columns of what that gave. */
  void sum(float[] from, float[] to) {
    for (int line = 0; line < side; line++) {
      line(from, across, line * side, 1);
    }
    for (int line = 0; line < side; line++) {
      line(across, to, line, side);
    }
  }

  private void line(float[] from, float[] to, int first, int step) {
    for (int at = 0; at < side; at++) {
      float sum = 0;
      int last = Math.min(side - 1, at + reach);
      for (int near = Math.max(0, at - reach); near <= last; near++) {
        sum += from[first + near * step];
      }
      to[first + at * step] = sum;
    }
  }
}
