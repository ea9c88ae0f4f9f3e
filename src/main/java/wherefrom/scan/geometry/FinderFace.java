package wherefrom.scan.geometry;

import wherefrom.scan.grey.Level;
import wherefrom.scan.grey.Pyramid;

/**
 * One finder pattern on a rod, as it is seen.
 *
 * @param x of its centre on the picture
 * @param y of its centre
 * @param module seen along the rod, in pixels
 * @param direction of the rod on the picture, in radians, from 0 to pi
 * @param narrow module seen across the rod by that along it: the cosine of how far aside it looks
 * @param fit of what is seen with a finder pattern and the light ring round it, to 1
 */
public record FinderFace(
    double x, double y, double module, double direction, double narrow, double fit) {
  /** Directions within half a turn that are tried. */
  private static final int DIRECTIONS = 24;

  private static final double[] NARROWS = {1, 0.8, 0.62, 0.48};

  /** A row that crosses the pattern askew finds it larger than it is. */
  private static final double[] SIZES = {0.67, 0.74, 0.82, 0.9, 1, 1.1, 1.3, 1.5};

  /** From the pattern's centre to the light ring round it, in modules. */
  private static final int REACH = 4;

  /** Grey values of spread that are noise. */
  private static final double NOISE = 4;

  /**
   * How a finder pattern lies that was found on a row.
   *
   * @param crossed a seventh of what the row crosses, in pixels
   */
  public static FinderFace of(Pyramid pyramid, double x, double y, double crossed) {
    Level level = pyramid.withAtLeast(1.6, crossed);
    FinderFace best = new FinderFace(x, y, crossed, 0, 1, 0);
    for (int turn = 0; turn < DIRECTIONS; turn++) {
      for (double narrow : NARROWS) {
        for (double size : SIZES) {
          double direction = Math.PI * turn / DIRECTIONS;
          double fit = fit(level, x, y, size * crossed, direction, narrow);
          if (fit > best.fit()) {
            best = new FinderFace(x, y, size * crossed, direction, narrow, fit);
          }
        }
      }
    }
    return best;
  }

  /** The same pattern, of which the rod runs along the other side. */
  public FinderFace across() {
    return new FinderFace(x, y, module, direction + Math.PI / 2, narrow, fit);
  }

  /** Whether another is the same pattern, found again. */
  public boolean isSame(FinderFace other) {
    return Math.hypot(x - other.x, y - other.y) < 2 * Math.max(module, other.module);
  }

  private static double fit(
      Level level, double x, double y, double module, double direction, double narrow) {
    double alongX = module * Math.cos(direction);
    double alongY = module * Math.sin(direction);
    double sum = 0;
    double squares = 0;
    double shared = 0;
    double wanted = 0;
    int points = 0;
    for (int v = -REACH; v <= REACH; v++) {
      for (int u = -REACH; u <= REACH; u++) {
        double grey =
            level.at(x + v * alongX + u * narrow * alongY, y + v * alongY - u * narrow * alongX);
        int light = isLight(Math.max(Math.abs(u), Math.abs(v))) ? 1 : 0;
        sum += grey;
        squares += grey * grey;
        shared += grey * light;
        wanted += light;
        points++;
      }
    }
    double spread = Math.max(0, squares / points - sum * sum / points / points) + NOISE * NOISE;
    double part = wanted / points;
    return (shared / points - part * sum / points) / Math.sqrt(spread * part * (1 - part));
  }

  private static boolean isLight(int ring) {
    return ring == REACH || ring == 2;
  }
}
