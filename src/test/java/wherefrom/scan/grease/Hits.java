package wherefrom.scan.grease;

/**
 * Where the rays of a row of pixels meet the label. They are followed through the corners of the
 * pixels and taken as even between them; along the outline of a rod each ray is followed itself.
 */
final class Hits {
  /** Cosine between ray and surface under which a pixel's corners say too little of its middle. */
  private static final double GRAZING = 0.35;

  private static final int STEEP = 1;

  /** Rays across a pixel, and as many down. */
  private static final int STEPS = 3;

  private static final double WEST = -LabelArt.CENTRE_X / (double) LabelArt.BLOCK;
  private static final double EAST =
      (LabelArt.PAPER_WIDTH - LabelArt.CENTRE_X) / (double) LabelArt.BLOCK;
  private static final double NORTH = -LabelArt.CENTRE_Y / (double) LabelArt.BLOCK;
  private static final double SOUTH =
      (LabelArt.PAPER_HEIGHT - LabelArt.CENTRE_Y) / (double) LabelArt.BLOCK;

  private final View view;
  private final int left;
  private final double[][] above = new double[STEPS][3];
  private final double[][] below = new double[STEPS][3];
  private double[][] upper;
  private double[][] lower;
  private int[] upperSides;
  private int[] lowerSides;
  private int row = Integer.MIN_VALUE;

  /** For the columns from left, so many of them. */
  Hits(View view, int left, int columns) {
    this.view = view;
    this.left = left;
    upper = new double[columns + 1][3];
    lower = new double[columns + 1][3];
    upperSides = new int[columns + 1];
    lowerSides = new int[columns + 1];
  }

  /** Goes to a row of pixels. */
  void row(int y) {
    if (y == row + 1) {
      double[][] spare = upper;
      upper = lower;
      lower = spare;
      int[] spareSides = upperSides;
      upperSides = lowerSides;
      lowerSides = spareSides;
    } else {
      follow(y, upper, upperSides);
    }
    follow(y + 1, lower, lowerSides);
    row = y;
  }

  private void follow(int y, double[][] hits, int[] sides) {
    for (int at = 0; at < hits.length; at++) {
      sides[at] = view.meet(left + at, y, hits[at]) ? sides(hits[at]) : 0;
    }
  }

  /** What holds where a ray meets: it comes steeply, or misses the paper on one side. */
  private static int sides(double[] hit) {
    return (hit[2] > GRAZING ? STEEP : 0)
        | (hit[0] < WEST ? 2 : 0)
        | (hit[0] > EAST ? 4 : 0)
        | (hit[1] < NORTH ? 8 : 0)
        | (hit[1] > SOUTH ? 16 : 0);
  }

  /** What holds at all four corners of a pixel. */
  private int sides(int x) {
    int at = x - left;
    return upperSides[at] & upperSides[at + 1] & lowerSides[at] & lowerSides[at + 1];
  }

  /** Whether the rays between the corners of a pixel may be taken as even. */
  boolean even(int x) {
    return (sides(x) & STEEP) != 0;
  }

  /** Whether the paper lies wholly to one side of a pixel. */
  boolean beside(int x) {
    return (sides(x) & ~STEEP) != 0;
  }

  /** Goes to a pixel of the row whose rays are {@link #even}. */
  void pixel(int x) {
    int at = x - left;
    for (int step = 0; step < STEPS; step++) {
      double dx = (step + 0.5) / STEPS;
      mix(upper[at], upper[at + 1], dx, above[step]);
      mix(lower[at], lower[at + 1], dx, below[step]);
    }
  }

  /**
   * Follows one of nine rays through the pixel, three across and three down.
   *
   * @param even what {@link #even} said of the pixel; if so, {@link #pixel} went there
   * @param hit filled as by {@link View#meet}
   * @return whether it meets the label's plane or rod
   */
  boolean meet(boolean even, int x, int across, int down, double[] hit) {
    double dy = (down + 0.5) / STEPS;
    if (!even) {
      return view.meet(x + (across + 0.5) / STEPS, row + dy, hit);
    }
    mix(above[across], below[across], dy, hit);
    return true;
  }

  /**
   * Whether all rays of a pixel meet whole texels of the paper, none of its edge.
   *
   * @param shrink size of a picture of the paper, 1 at full size
   */
  boolean within(int x, double shrink, Plane picture) {
    int at = x - left;
    return within(upper[at], shrink, picture)
        && within(upper[at + 1], shrink, picture)
        && within(lower[at], shrink, picture)
        && within(lower[at + 1], shrink, picture);
  }

  private static boolean within(double[] hit, double shrink, Plane picture) {
    return picture.holds(
        texel(hit[0], LabelArt.CENTRE_X, shrink), texel(hit[1], LabelArt.CENTRE_Y, shrink));
  }

  private static double texel(double onLabel, double centre, double shrink) {
    return (onLabel * LabelArt.BLOCK + centre) * shrink - 0.5;
  }

  /** The light of all nine rays of a pixel that is {@link #even} and {@link #within}. */
  double lit(double shrink, Plane picture) {
    double sum = 0;
    for (int down = 0; down < STEPS; down++) {
      double dy = (down + 0.5) / STEPS;
      for (int across = 0; across < STEPS; across++) {
        double[] from = above[across];
        double[] to = below[across];
        double x = texel(from[0] + (to[0] - from[0]) * dy, LabelArt.CENTRE_X, shrink);
        double y = texel(from[1] + (to[1] - from[1]) * dy, LabelArt.CENTRE_Y, shrink);
        sum += picture.between(x, y) * Shot.lit(from[2] + (to[2] - from[2]) * dy);
      }
    }
    return sum;
  }

  private static void mix(double[] from, double[] to, double share, double[] mixed) {
    mixed[0] = from[0] + (to[0] - from[0]) * share;
    mixed[1] = from[1] + (to[1] - from[1]) * share;
    mixed[2] = from[2] + (to[2] - from[2]) * share;
  }
}
