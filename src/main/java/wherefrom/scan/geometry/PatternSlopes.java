package wherefrom.scan.geometry;

import java.util.Arrays;
import wherefrom.scan.grey.Level;

/**
 * How what {@link PatternFit} sees at its points changes with each parameter of a pose. For the
 * corners that is the change of the map times what the map is applied to, so that no point is
 * projected again; only for the bend and its axis the points are laid anew.
 */
final class PatternSlopes {
  private static final int ZONES = LabelPattern.ZONES;

  private final LabelPattern pattern;
  private final Projection projection;
  private final PatternPoints points;
  private final PatternPoints elsewhere;
  private final double[] base = new double[Projection.COEFFICIENTS];
  private final double[] change = new double[Projection.COEFFICIENTS];
  private final float[] spot = new float[3];

  /** Slopes of the grey values by the spread of their zone, to the right and downwards. */
  private final double[] across;

  private final double[] down;

  /** How they change with the numerators of a point's coordinates, and with their denominator. */
  private final double[] right;

  private final double[] below;
  private final double[] away;
  private final double[] sum = new double[ZONES];
  private final double[] product = new double[ZONES];

  PatternSlopes(LabelPattern pattern, CameraModel camera, PatternPoints points) {
    this.pattern = pattern;
    this.points = points;
    projection = new Projection(camera);
    elsewhere = new PatternPoints(pattern.u, pattern.v);
    across = new double[pattern.size];
    down = new double[pattern.size];
    right = new double[pattern.size];
    below = new double[pattern.size];
    away = new double[pattern.size];
  }

  /** Goes to where the points are seen now. */
  void begin(Level level, double[] values, double[] spread) {
    projection.set(values);
    projection.copyTo(base);
    for (int part = 0; part < 2 * ZONES; part++) {
      double scale = 1 / spread[part % ZONES];
      for (int at = pattern.parts[part]; at < pattern.parts[part + 1]; at++) {
        level.at(points.x[at], points.y[at], spot);
        across[at] = spot[1] * scale;
        down[at] = spot[2] * scale;
        right[at] = across[at] * points.inverse[at];
        below[at] = down[at] * points.inverse[at];
        away[at] = right[at] * points.x[at] + below[at] * points.y[at];
      }
    }
  }

  /**
   * The slopes for a parameter.
   *
   * @param moved the values with that parameter a step further
   * @param laid whether the points lie on the tag's flat plane where they lay
   */
  void slope(double[] moved, boolean laid, float[] relative, float[] out) {
    projection.set(moved);
    if (laid) {
      byMap(out);
    } else {
      byPlace(out);
    }
    centre(relative, out);
  }

  private void byMap(float[] out) {
    projection.copyTo(change);
    for (int at = 0; at < change.length; at++) {
      change[at] -= base[at];
    }
    for (int at = 0; at < out.length; at++) {
      double u = points.flatU[at];
      double v = points.flatV[at];
      double x = change[0] * u + change[1] * v + change[2];
      double y = change[3] * u + change[4] * v + change[5];
      double w = change[6] * u + change[7] * v;
      out[at] = (float) (right[at] * x + below[at] * y - away[at] * w);
    }
    if (projection.isBent()) {
      for (int at = 0; at < out.length; at++) {
        double behind = right[at] * change[8] + below[at] * change[9] - away[at] * change[10];
        out[at] += (float) (points.depth[at] * behind);
      }
    }
  }

  private void byPlace(float[] out) {
    elsewhere.see(projection, 0);
    for (int at = 0; at < out.length; at++) {
      double x = elsewhere.x[at] - points.x[at];
      double y = elsewhere.y[at] - points.y[at];
      out[at] = (float) (across[at] * x + down[at] * y);
    }
  }

  /** Takes out what the best light and contrast of each quarter takes out. */
  private void centre(float[] relative, float[] out) {
    Arrays.fill(sum, 0);
    Arrays.fill(product, 0);
    for (int part = 0; part < 2 * ZONES; part++) {
      float slopes = 0;
      float products = 0;
      for (int at = pattern.parts[part]; at < pattern.parts[part + 1]; at++) {
        slopes += out[at];
        products += out[at] * relative[at];
      }
      sum[part % ZONES] += slopes;
      product[part % ZONES] += products;
    }
    for (int part = 0; part < 2 * ZONES; part++) {
      int count = pattern.count(part % ZONES);
      float mean = (float) (sum[part % ZONES] / count);
      float shared = (float) (product[part % ZONES] / count);
      for (int at = pattern.parts[part]; at < pattern.parts[part + 1]; at++) {
        out[at] -= mean + relative[at] * shared;
      }
    }
  }
}
