package wherefrom.workings.maths;

import java.math.BigDecimal;

/**
 * A number that carries its partial derivatives with respect to the inputs along (forward-mode
 * automatic differentiation), so that a formula written once gives both its value and the
 * sensitivity coefficients of JCGM 100:2008, 5.1.3.
 */
public final class Dual {
  private static final DoubleDouble PER_DEGREE = DoubleDouble.PI.dividedBy(DoubleDouble.of(180));
  private static final double[] FLAT = {};

  /** In base units; 31 digits of the largest volume in mm³ end before it. */
  private static final double ROUNDING = 1e-24;

  private final DoubleDouble value;
  private final double[] slopes;

  private Dual(DoubleDouble value, double[] slopes) {
    this.value = value;
    this.slopes = slopes;
  }

  /** A number that depends on no input. */
  public static Dual of(double constant) {
    return of(DoubleDouble.of(constant));
  }

  /** A number that depends on no input. */
  public static Dual of(DoubleDouble constant) {
    return new Dual(constant, FLAT);
  }

  /** A number that depends on no input, such as 0.02. */
  public static Dual of(String decimal) {
    return of(DoubleDouble.of(new BigDecimal(decimal)));
  }

  /** Input number {@code index} of {@code count}. */
  public static Dual ofInput(DoubleDouble value, int index, int count) {
    double[] slopes = new double[count];
    slopes[index] = 1;
    return new Dual(value, slopes);
  }

  public DoubleDouble value() {
    return value;
  }

  public double toDouble() {
    return value.toDouble();
  }

  /** The partial derivative with respect to one input. */
  public double slope(int index) {
    return index < slopes.length ? slopes[index] : 0;
  }

  public Dual plus(Dual other) {
    return new Dual(value.plus(other.value), mixed(other, 1, 1));
  }

  public Dual minus(Dual other) {
    return new Dual(value.minus(other.value), mixed(other, 1, -1));
  }

  public Dual times(Dual other) {
    return new Dual(value.times(other.value), mixed(other, other.toDouble(), toDouble()));
  }

  public Dual times(double factor) {
    return times(of(factor));
  }

  public Dual dividedBy(Dual other) {
    DoubleDouble quotient = value.dividedBy(other.value);
    double inverse = 1 / other.toDouble();
    return new Dual(quotient, mixed(other, inverse, -quotient.toDouble() * inverse));
  }

  public Dual squared() {
    return times(this);
  }

  public Dual negated() {
    return of(0).minus(this);
  }

  /** The sine of this many degrees. */
  public Dual sineOfDegrees() {
    double slope = Turn.cosine(value).times(PER_DEGREE).toDouble();
    return new Dual(Turn.sine(value), mixed(of(0), slope, 0));
  }

  /** The cosine of this many degrees. */
  public Dual cosineOfDegrees() {
    double slope = -Turn.sine(value).times(PER_DEGREE).toDouble();
    return new Dual(Turn.cosine(value), mixed(of(0), slope, 0));
  }

  /** The larger of both; of equals, this one. */
  public Dual max(Dual other) {
    return isLessThan(other) ? other : this;
  }

  /** The smaller of both; of equals, this one. */
  public Dual min(Dual other) {
    return other.isLessThan(this) ? other : this;
  }

  public Dual abs() {
    return isLessThan(of(0)) ? negated() : this;
  }

  /**
   * Whether this is the smaller. What rounding leaves between figures that are equal, such as twice
   * a wear of 0.005 in and a step of 0.010 in, is no difference.
   */
  public boolean isLessThan(Dual other) {
    return other.value.minus(value).toDouble() > ROUNDING;
  }

  private double[] mixed(Dual other, double mine, double theirs) {
    double[] result = new double[Math.max(slopes.length, other.slopes.length)];
    for (int i = 0; i < result.length; i++) {
      result[i] = mine * slope(i) + theirs * other.slope(i);
    }
    return result;
  }
}
