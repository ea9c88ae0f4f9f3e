package wherefrom.workings.maths;

import java.math.BigDecimal;

/**
 * A number that carries its partial derivatives with respect to the inputs along (forward-mode
 * automatic differentiation), so that a formula written once gives both its value and the
 * sensitivity coefficients of JCGM 100:2008, 5.1.3.
 */
public final class DualNumber {
  private static final DoubleDouble PER_DEGREE = DoubleDouble.PI.dividedBy(DoubleDouble.of(180));
  private static final double[] FLAT = {};

  /** In base units; 31 digits of the largest volume in mm³ end before it. */
  private static final double ROUNDING = 1e-24;

  private final DoubleDouble value;
  private final double[] slopes;

  private DualNumber(DoubleDouble value, double[] slopes) {
    this.value = value;
    this.slopes = slopes;
  }

  /** A number that depends on no input. */
  public static DualNumber of(double constant) {
    return of(DoubleDouble.of(constant));
  }

  /** A number that depends on no input. */
  public static DualNumber of(DoubleDouble constant) {
    return new DualNumber(constant, FLAT);
  }

  /** A number that depends on no input, such as 0.02. */
  public static DualNumber of(String decimal) {
    return of(DoubleDouble.of(new BigDecimal(decimal)));
  }

  /** Input number {@code index} of {@code count}. */
  public static DualNumber ofInput(DoubleDouble value, int index, int count) {
    double[] slopes = new double[count];
    slopes[index] = 1;
    return new DualNumber(value, slopes);
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

  public DualNumber plus(DualNumber other) {
    return new DualNumber(value.plus(other.value), mixed(other, 1, 1));
  }

  public DualNumber minus(DualNumber other) {
    return new DualNumber(value.minus(other.value), mixed(other, 1, -1));
  }

  public DualNumber times(DualNumber other) {
    return new DualNumber(value.times(other.value), mixed(other, other.toDouble(), toDouble()));
  }

  public DualNumber times(double factor) {
    return times(of(factor));
  }

  public DualNumber dividedBy(DualNumber other) {
    DoubleDouble quotient = value.dividedBy(other.value);
    double inverse = 1 / other.toDouble();
    return new DualNumber(quotient, mixed(other, inverse, -quotient.toDouble() * inverse));
  }

  public DualNumber squared() {
    return times(this);
  }

  public DualNumber negated() {
    return of(0).minus(this);
  }

  /** The sine of this many degrees. */
  public DualNumber sineOfDegrees() {
    double slope = Turn.cosine(value).times(PER_DEGREE).toDouble();
    return new DualNumber(Turn.sine(value), mixed(of(0), slope, 0));
  }

  /** The cosine of this many degrees. */
  public DualNumber cosineOfDegrees() {
    double slope = -Turn.sine(value).times(PER_DEGREE).toDouble();
    return new DualNumber(Turn.cosine(value), mixed(of(0), slope, 0));
  }

  /** The larger of both; of equals, this one. */
  public DualNumber max(DualNumber other) {
    return isLessThan(other) ? other : this;
  }

  /** The smaller of both; of equals, this one. */
  public DualNumber min(DualNumber other) {
    return other.isLessThan(this) ? other : this;
  }

  public DualNumber abs() {
    return isLessThan(of(0)) ? negated() : this;
  }

  /**
   * Whether this is the smaller. What rounding leaves between figures that are equal, such as twice
   * a wear of 0.005 in and a step of 0.010 in, is no difference.
   */
  public boolean isLessThan(DualNumber other) {
    return other.value.minus(value).toDouble() > ROUNDING;
  }

  private double[] mixed(DualNumber other, double mine, double theirs) {
    double[] result = new double[Math.max(slopes.length, other.slopes.length)];
    for (int i = 0; i < result.length; i++) {
      result[i] = mine * slope(i) + theirs * other.slope(i);
    }
    return result;
  }
}
