package wherefrom.scan.grease;

/**
 * Where the rays of a row of pixels meet the label. They are followed through the corners of the
 * pixels and taken as even between them; along the outline of a rod each ray is followed itself.
 */
final class Hits {
  /** Cosine between ray and surface under which a pixel's corners say too little of its middle. */
  private static final double GRAZING = 0.35;

  private static final double WEST = -LabelArt.CENTRE_X / (double) LabelArt.BLOCK;
  private static final double EAST =
      (LabelArt.PAPER_WIDTH - LabelArt.CENTRE_X) / (double) LabelArt.BLOCK;
  private static final double NORTH = -LabelArt.CENTRE_Y / (double) LabelArt.BLOCK;
  private static final double SOUTH =
      (LabelArt.PAPER_HEIGHT - LabelArt.CENTRE_Y) / (double) LabelArt.BLOCK;

  private final View view;
  private final int left;
  private double[][] upper;
  private double[][] lower;
  private int row = Integer.MIN_VALUE;

  /** For the columns from left, so many of them. */
  Hits(View view, int left, int columns) {
    this.view = view;
    this.left = left;
    upper = new double[columns + 1][3];
    lower = new double[columns + 1][3];
  }

  /** Goes to a row of pixels. */
  void row(int y) {
    if (y == row + 1) {
      double[][] spare = upper;
      upper = lower;
      lower = spare;
    } else {
      follow(y, upper);
    }
    follow(y + 1, lower);
    row = y;
  }

  private void follow(int y, double[][] hits) {
    for (int at = 0; at < hits.length; at++) {
      if (!view.meet(left + at, y, hits[at])) {
        hits[at][2] = Double.NaN;
      }
    }
  }

  /** Whether the rays between the corners of a pixel may be taken as even. */
  boolean even(int x) {
    int at = x - left;
    return upper[at][2] > GRAZING
        && upper[at + 1][2] > GRAZING
        && lower[at][2] > GRAZING
        && lower[at + 1][2] > GRAZING;
  }

  /** Whether the paper lies wholly to one side of a pixel. */
  boolean beside(int x) {
    int at = x - left;
    double[][] corners = {upper[at], upper[at + 1], lower[at], lower[at + 1]};
    boolean west = true;
    boolean east = true;
    boolean north = true;
    boolean south = true;
    for (double[] corner : corners) {
      west &= corner[0] < WEST;
      east &= corner[0] > EAST;
      north &= corner[1] < NORTH;
      south &= corner[1] > SOUTH;
    }
    return west || east || north || south;
  }

  /**
   * Follows a ray through a pixel of the row.
   *
   * @param even what {@link #even} said of the pixel
   * @param dx how far into the pixel from its left, 0 to 1
   * @param dy how far into the pixel from its top, 0 to 1
   * @param hit filled as by {@link View#meet}
   * @return whether it meets the label's plane or rod
   */
  boolean meet(boolean even, int x, double dx, double dy, double[] hit) {
    if (!even) {
      return view.meet(x + dx, row + dy, hit);
    }
    int at = x - left;
    for (int part = 0; part < 3; part++) {
      double above = upper[at][part] + (upper[at + 1][part] - upper[at][part]) * dx;
      double below = lower[at][part] + (lower[at + 1][part] - lower[at][part]) * dx;
      hit[part] = above + (below - above) * dy;
    }
    return true;
  }
}
