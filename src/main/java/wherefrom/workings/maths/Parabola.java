package wherefrom.workings.maths;

import java.util.Optional;

/** The parabola a·x² + b·x + c that lies nearest to points, by least squares about their middle. */
public final class Parabola {
  /** Fewer points than this lie on a parabola whatever they are. */
  public static final int FEWEST = 4;

  /**
   * Its lowest point.
   *
   * @param x where it is
   * @param y how low
   * @param share by which factor an error that each point has of its own goes into {@code y}
   * @param shift by which factor it goes into {@code x}
   * @param scatter how far the points lie off the parabola, as a standard deviation
   */
  public record Lowest(double x, double y, double share, double shift, double scatter) {}

  private final double[] xs;
  private final double[] ys;
  private final double middle;
  private final double[][] inverse;
  private final double[] moments;

  /**
   * @throws IllegalArgumentException where there are fewer than {@link #FEWEST} points, or the
   *     points do not lie at three places or more
   */
  public Parabola(double[] xs, double[] ys) {
    if (xs.length != ys.length || xs.length < FEWEST) {
      throw new IllegalArgumentException("a parabola needs " + FEWEST + " points");
    }
    this.xs = xs.clone();
    this.ys = ys.clone();
    double sum = 0;
    for (double x : xs) {
      sum += x;
    }
    middle = sum / xs.length;
    double[][] normal = new double[3][3];
    moments = new double[3];
    for (int at = 0; at < xs.length; at++) {
      double[] powers = powers(xs[at]);
      for (int row = 0; row < 3; row++) {
        moments[row] += powers[row] * ys[at];
        for (int column = 0; column < 3; column++) {
          normal[row][column] += powers[row] * powers[column];
        }
      }
    }
    inverse = inverse(normal);
  }

  private double[] powers(double x) {
    double t = x - middle;
    return new double[] {1, t, t * t};
  }

  private static double[][] inverse(double[][] of) {
    double whole =
        of[0][0] * minor(of, 0, 0) - of[0][1] * minor(of, 0, 1) + of[0][2] * minor(of, 0, 2);
    if (whole <= 0) {
      throw new IllegalArgumentException("the points must lie at three places or more");
    }
    double[][] inverse = new double[3][3];
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 3; column++) {
        double sign = (row + column) % 2 == 0 ? 1 : -1;
        inverse[row][column] = sign * minor(of, row, column) / whole;
      }
    }
    return inverse;
  }

  /** Of a matrix that is its own mirror image. */
  private static double minor(double[][] of, int row, int column) {
    int r1 = row == 0 ? 1 : 0;
    int r2 = row == 2 ? 1 : 2;
    int c1 = column == 0 ? 1 : 0;
    int c2 = column == 2 ? 1 : 2;
    return of[r1][c1] * of[r2][c2] - of[r1][c2] * of[r2][c1];
  }

  /** A coefficient of the powers about the middle: 0 the height, 1 the slope, 2 the bend. */
  private double coefficient(int power) {
    double sum = 0;
    for (int column = 0; column < 3; column++) {
      sum += inverse[power][column] * moments[column];
    }
    return sum;
  }

  /** The lowest point; empty where it bends down or its lowest point lies outside of the points. */
  public Optional<Lowest> findLowest() {
    double bend = coefficient(2);
    if (bend <= 0) {
      return Optional.empty();
    }
    double t = -coefficient(1) / (2 * bend);
    double x = middle + t;
    if (x < least() || x > most()) {
      return Optional.empty();
    }
    double y = coefficient(0) + coefficient(1) * t + bend * t * t;
    // At the lowest point a shift of x changes nothing, so the weights there are those of y.
    double share = length(new double[] {1, t, t * t});
    double shift = length(new double[] {0, 1, 2 * t}) / (2 * bend);
    return Optional.of(new Lowest(x, y, share, shift, scatter()));
  }

  /** Three of the points are used up by the parabola itself. */
  private double scatter() {
    double squares = 0;
    for (int at = 0; at < xs.length; at++) {
      double[] powers = powers(xs[at]);
      double off = ys[at];
      for (int power = 0; power < 3; power++) {
        off -= coefficient(power) * powers[power];
      }
      squares += off * off;
    }
    return Math.sqrt(squares / (xs.length - 3));
  }

  private double least() {
    double least = xs[0];
    for (double x : xs) {
      least = Math.min(least, x);
    }
    return least;
  }

  private double most() {
    double most = xs[0];
    for (double x : xs) {
      most = Math.max(most, x);
    }
    return most;
  }

  /** How long the row of weights is by which the points make up this sum of coefficients. */
  private double length(double[] of) {
    double squares = 0;
    for (double x : xs) {
      double weight = 0;
      double[] powers = powers(x);
      for (int row = 0; row < 3; row++) {
        for (int column = 0; column < 3; column++) {
          weight += of[row] * inverse[row][column] * powers[column];
        }
      }
      squares += weight * weight;
    }
    return Math.sqrt(squares);
  }
}
