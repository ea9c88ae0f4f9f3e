package wherefrom.scan.geometry;

import java.util.Arrays;
import java.util.stream.IntStream;
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

  /** Of what the middle covers: what covers less is as good as hidden. */
  private static final double FACING = 0.15;

  private static final double STEP = 0.25;

  private final LabelPattern pattern;
  private final Projection projection;
  private final float[] grey;
  private final double[] sum = new double[ZONES];
  private final double[] squares = new double[ZONES];
  private final double[] product = new double[ZONES];
  private final PatternValues sharp;
  private final PatternValues soft;
  private final PatternValues softFrame;
  private final double[] spread = new double[ZONES];
  private final PatternPoints points;
  private final PatternPoints everyTurn;
  private final float[] everyGrey;
  private final PatternSlopes slopes;

  /** Grey values with the mean of their zone taken out, by its spread. */
  private final float[] relative;

  public PatternFit(LabelPattern pattern, CameraModel camera) {
    this.pattern = pattern;
    projection = new Projection(camera);
    grey = new float[pattern.size];
    relative = new float[pattern.size];
    points = new PatternPoints(pattern.u, pattern.v);
    everyTurn = new PatternPoints(pattern.turned.u, pattern.turned.v);
    everyGrey = new float[pattern.turned.u.length];
    slopes = new PatternSlopes(pattern, camera, points);
    sharp = new PatternValues(pattern, pattern.sharp, 0);
    soft = new PatternValues(pattern, pattern.soft, 0);
    softFrame = new PatternValues(pattern, pattern.soft, ZONES);
  }

  /** The fit of the sharp pattern on the level on which a module is about two pixels. */
  public double score(Pyramid pyramid, Pose pose) {
    return score(pyramid.withAtLeast(1.6, pose.narrowModule()), pose, sharp);
  }

  /** The fit of the blurred pattern on a coarser level: forgives a pose that is a module off. */
  public double coarseScore(Pyramid pyramid, Pose pose) {
    return score(pyramid.withAtLeast(0.8, pose.narrowModule()), pose, soft);
  }

  /**
   * The coarse fits of a pose turned by no, one, two and three quarters, from one look at the
   * picture.
   */
  public double[] turnedScores(Pyramid pyramid, Pose pose) {
    Level level = pyramid.withAtLeast(0.8, pose.narrowModule());
    projection.set(pose.values());
    everyTurn.see(projection, 0);
    level.at(everyTurn.x, everyTurn.y, 0, everyGrey);
    double[] scores = new double[TurnedPlaces.TURNS];
    for (int quarters = 0; quarters < scores.length; quarters++) {
      pattern.turned.turn(quarters, everyGrey, grey);
      weigh(soft);
      scores[quarters] = score(soft);
    }
    return scores;
  }

  /** The coarse fit of what lies round the symbol: the same for all four turns. */
  public double frameScore(Pyramid pyramid, Pose pose) {
    Level level = pyramid.withAtLeast(0.8, pose.narrowModule());
    return score(level, pose, softFrame);
  }

  private double score(Level level, Pose pose, PatternValues wanted) {
    sample(level, pose.values(), wanted);
    return score(wanted);
  }

  private double score(PatternValues wanted) {
    double total = 0;
    for (int zone = 0; zone < ZONES; zone++) {
      double shared = (product[zone] - wanted.mean[zone] * sum[zone]) / wanted.count[zone];
      double spreads = (variance(zone, wanted) + NOISE * NOISE) * wanted.variance[zone];
      total += shared / Math.sqrt(spreads);
    }
    return total / ZONES;
  }

  private double variance(int zone, PatternValues wanted) {
    double middle = sum[zone] / wanted.count[zone];
    return Math.max(0, squares[zone] / wanted.count[zone] - middle * middle);
  }

  private void sample(Level level, double[] values, PatternValues wanted) {
    int from = pattern.parts[wanted.firstPart];
    projection.set(values);
    points.see(projection, from);
    level.at(points.x, points.y, from, grey);
    weigh(wanted);
  }

  /** Takes the sums of each zone anew from the grey values of its points. */
  private void weigh(PatternValues wanted) {
    Arrays.fill(sum, 0);
    Arrays.fill(squares, 0);
    Arrays.fill(product, 0);
    for (int part = wanted.firstPart; part < 2 * ZONES; part++) {
      add(part % ZONES, pattern.parts[part], pattern.parts[part + 1], wanted.values);
    }
  }

  /** In two sums each that need not wait for each other. */
  private void add(int zone, int from, int end, float[] expected) {
    double values = 0;
    double valuesSquared = 0;
    double shared = 0;
    double moreValues = 0;
    double moreSquared = 0;
    double moreShared = 0;
    int at = from;
    for (; at + 1 < end; at += 2) {
      float value = grey[at];
      float more = grey[at + 1];
      values += value;
      valuesSquared += value * value;
      shared += value * expected[at];
      moreValues += more;
      moreSquared += more * more;
      moreShared += more * expected[at + 1];
    }
    if (at < end) {
      values += grey[at];
      valuesSquared += grey[at] * grey[at];
      shared += grey[at] * expected[at];
    }
    sum[zone] += values + moreValues;
    squares[zone] += valuesSquared + moreSquared;
    product[zone] += shared + moreShared;
  }

  /** Points of the pattern that do not face the camera, or hardly. */
  int[] hidden(Pose pose) {
    projection.set(pose.values());
    double least = FACING * facing(0, 0);
    return IntStream.range(0, pattern.size)
        .filter(at -> facing(pattern.u[at], pattern.v[at]) < least)
        .toArray();
  }

  /**
   * What a small square of the tag covers on the picture; negative where it is seen from behind.
   */
  private double facing(double u, double v) {
    projection.project(u - STEP, v);
    double x = projection.x();
    double y = projection.y();
    projection.project(u + STEP, v);
    double rightX = projection.x() - x;
    double rightY = projection.y() - y;
    projection.project(u, v - STEP);
    x = projection.x();
    y = projection.y();
    projection.project(u, v + STEP);
    return rightX * (projection.y() - y) - rightY * (projection.x() - x);
  }

  int size() {
    return pattern.size;
  }

  PatternValues expected(boolean blurred) {
    return blurred ? soft : sharp;
  }

  /** What is left at each point after the best light and contrast of each quarter is taken out. */
  void residuals(Level level, double[] values, PatternValues expected, float[] out) {
    sample(level, values, expected);
    for (int zone = 0; zone < ZONES; zone++) {
      spread[zone] = Math.sqrt(variance(zone, expected) + NOISE * NOISE);
    }
    for (int part = 0; part < 2 * ZONES; part++) {
      float mean = (float) (sum[part % ZONES] / expected.count[part % ZONES]);
      float scale = (float) (1 / spread[part % ZONES]);
      for (int at = pattern.parts[part]; at < pattern.parts[part + 1]; at++) {
        relative[at] = (grey[at] - mean) * scale;
        out[at] = relative[at] - expected.values[at];
      }
    }
  }

  /**
   * How the residuals change with each parameter. The last {@link #residuals} were of the same
   * level and values.
   *
   * @param steps of the parameters, for which the slopes hold
   */
  void slopes(Level level, double[] values, double[] steps, int free, float[][] out) {
    slopes.begin(level, values, spread);
    double[] moved = values.clone();
    for (int p = 0; p < free; p++) {
      moved[p] = values[p] + steps[p];
      slopes.slope(moved, p < Pose.BEND, relative, out[p]);
      moved[p] = values[p];
    }
  }
}
