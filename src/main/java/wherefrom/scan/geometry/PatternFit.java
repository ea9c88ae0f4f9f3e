package wherefrom.scan.geometry;

import java.util.Arrays;
import wherefrom.scan.grey.Level;
import wherefrom.scan.grey.Pyramid;

/**
 * How well the pattern of every label lies over the picture at a pose: for each quarter of the
 * label the correlation of grey values with the expected ones, from -1 to 1, and their mean.
 */
public final class PatternFit {
  private static final int ZONES = LabelPattern.ZONES;

  /** Grey values of spread that are noise: keeps flat patches from fitting by chance. */
  private static final double NOISE = 4;

  private final LabelPattern pattern;
  private final Projection projection;
  private final float[] grey;
  private final double[] sum = new double[ZONES];
  private final double[] squares = new double[ZONES];
  private final double[] product = new double[ZONES];
  private final int[] count = new int[ZONES];
  private final double[] expectedSum = new double[ZONES];
  private final double[] expectedSquares = new double[ZONES];
  private final double[] mean = new double[ZONES];
  private final double[] spread = new double[ZONES];
  private final double[] slopeSum = new double[ZONES];
  private final double[] slopeProduct = new double[ZONES];
  private final double[] seenX;
  private final double[] seenY;
  private final double[] baseX;
  private final double[] baseY;
  private final float[] acrossSlope;
  private final float[] downSlope;
  private final float[] spot = new float[3];

  public PatternFit(LabelPattern pattern, CameraModel camera) {
    this.pattern = pattern;
    projection = new Projection(camera);
    grey = new float[pattern.size];
    seenX = new double[pattern.size];
    seenY = new double[pattern.size];
    baseX = new double[pattern.size];
    baseY = new double[pattern.size];
    acrossSlope = new float[pattern.size];
    downSlope = new float[pattern.size];
  }

  /** The fit of the sharp pattern on the level on which a module is about two pixels. */
  public double score(Pyramid pyramid, Pose pose) {
    return score(pyramid.withAtLeast(1.6, pose.narrowModule()), pose, pattern.sharp, 0);
  }

  /** The fit of the blurred pattern on a coarser level: forgives a pose that is a module off. */
  public double coarseScore(Pyramid pyramid, Pose pose) {
    return score(pyramid.withAtLeast(0.8, pose.narrowModule()), pose, pattern.soft, 0);
  }

  /** The coarse fit of what lies round the symbol: the same for all four turns. */
  public double frameScore(Pyramid pyramid, Pose pose) {
    Level level = pyramid.withAtLeast(0.8, pose.narrowModule());
    return score(level, pose, pattern.soft, pattern.around);
  }

  private double score(Level level, Pose pose, float[] expected, int from) {
    sample(level, pose.values(), expected, from);
    double total = 0;
    for (int part = 0; part < ZONES; part++) {
      int points = count[part];
      double wanted = expectedSum[part] / points;
      double wantedSpread = expectedSquares[part] / points - wanted * wanted;
      double shared = product[part] / points - wanted * sum[part] / points;
      total += shared / Math.sqrt((variance(part) + NOISE * NOISE) * wantedSpread);
    }
    return total / ZONES;
  }

  private double variance(int part) {
    double middle = sum[part] / count[part];
    return Math.max(0, squares[part] / count[part] - middle * middle);
  }

  private void sample(Level level, double[] values, float[] expected, int from) {
    projection.set(values);
    Arrays.fill(sum, 0);
    Arrays.fill(squares, 0);
    Arrays.fill(product, 0);
    Arrays.fill(count, 0);
    Arrays.fill(expectedSum, 0);
    Arrays.fill(expectedSquares, 0);
    projection.project(pattern.u, pattern.v, from, seenX, seenY);
    for (int at = from; at < pattern.size; at++) {
      float value = level.at(seenX[at], seenY[at]);
      float wanted = expected[at];
      int part = pattern.zone[at];
      grey[at] = value;
      count[part]++;
      sum[part] += value;
      squares[part] += value * value;
      product[part] += value * wanted;
      expectedSum[part] += wanted;
      expectedSquares[part] += wanted * wanted;
    }
  }

  int size() {
    return pattern.size;
  }

  float[] expected(boolean blurred) {
    return blurred ? pattern.soft : pattern.sharp;
  }

  /** What is left at each point after the best light and contrast of each quarter is taken out. */
  void residuals(Level level, double[] values, float[] expected, float[] out) {
    sample(level, values, expected, 0);
    for (int part = 0; part < ZONES; part++) {
      mean[part] = sum[part] / count[part];
      spread[part] = Math.sqrt(variance(part) + NOISE * NOISE);
    }
    for (int at = 0; at < pattern.size; at++) {
      int part = pattern.zone[at];
      out[at] = (float) ((grey[at] - mean[part]) / spread[part]) - expected[at];
    }
  }

  /**
   * How the residuals change with each parameter, after {@link #residuals} at the same values.
   *
   * @param steps of the parameters, for which the slopes hold
   */
  void slopes(Level level, double[] values, double[] steps, int free, float[][] out) {
    projection.set(values);
    projection.project(pattern.u, pattern.v, 0, baseX, baseY);
    for (int at = 0; at < pattern.size; at++) {
      level.at(baseX[at], baseY[at], spot);
      double scale = 1 / spread[pattern.zone[at]];
      acrossSlope[at] = (float) (spot[1] * scale);
      downSlope[at] = (float) (spot[2] * scale);
    }
    double[] moved = values.clone();
    for (int p = 0; p < free; p++) {
      moved[p] = values[p] + steps[p];
      projection.set(moved);
      moved[p] = values[p];
      slope(out[p]);
    }
  }

  private void slope(float[] out) {
    Arrays.fill(slopeSum, 0);
    Arrays.fill(slopeProduct, 0);
    projection.project(pattern.u, pattern.v, 0, seenX, seenY);
    for (int at = 0; at < pattern.size; at++) {
      float slope =
          (float)
              (acrossSlope[at] * (seenX[at] - baseX[at]) + downSlope[at] * (seenY[at] - baseY[at]));
      int part = pattern.zone[at];
      out[at] = slope;
      slopeSum[part] += slope;
      slopeProduct[part] += slope * (grey[at] - mean[part]) / spread[part];
    }
    for (int at = 0; at < pattern.size; at++) {
      int part = pattern.zone[at];
      double relative = (grey[at] - mean[part]) / spread[part];
      out[at] -= (float) ((slopeSum[part] + relative * slopeProduct[part]) / count[part]);
    }
  }
}
