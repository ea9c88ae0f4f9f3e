package wherefrom.workings.maths;

import java.math.BigDecimal;

/**
 * The unevaluated sum of two doubles, good for about 31 significant digits, so that a difference of
 * nearly equal lengths keeps its meaning. The steps are those of T. J. Dekker, "A floating-point
 * technique for extending the available precision", Numerische Mathematik 18 (1971) (title from
 * memory).
 *
 * @param high the value rounded to the nearest double
 * @param low what the rounding left over
 */
public record DoubleDouble(double high, double low) implements Comparable<DoubleDouble> {
  /** Whole numbers with so many digits are exact as doubles. */
  private static final int EXACT_DIGITS = 15;

  /** The largest power of ten that is exact as a double. */
  private static final int EXACT_POWER = 22;

  /** π: the nearest double and what it leaves over. */
  public static final DoubleDouble PI = new DoubleDouble(Math.PI, 1.2246467991473532e-16);

  public static DoubleDouble of(double value) {
    return new DoubleDouble(value, 0);
  }

  /** Keeps the first 31 digits or so. */
  public static DoubleDouble of(BigDecimal value) {
    int scale = value.scale();
    if (value.precision() <= EXACT_DIGITS && scale >= 0 && scale <= EXACT_POWER) {
      double whole = value.unscaledValue().longValue();
      return of(whole).dividedBy(of(Math.pow(10, scale)));
    }
    double high = value.doubleValue();
    return new DoubleDouble(high, value.subtract(new BigDecimal(high)).doubleValue());
  }

  public DoubleDouble plus(DoubleDouble other) {
    DoubleDouble s = twoSum(high, other.high);
    DoubleDouble t = twoSum(low, other.low);
    DoubleDouble upper = quickTwoSum(s.high, s.low + t.high);
    return quickTwoSum(upper.high, upper.low + t.low);
  }

  public DoubleDouble negated() {
    return new DoubleDouble(-high, -low);
  }

  public DoubleDouble minus(DoubleDouble other) {
    return plus(other.negated());
  }

  public DoubleDouble times(DoubleDouble other) {
    double product = high * other.high;
    double rest = Math.fma(high, other.high, -product);
    return quickTwoSum(product, rest + (high * other.low + low * other.high));
  }

  /** A division by zero gives infinity or no number, as with doubles. */
  public DoubleDouble dividedBy(DoubleDouble other) {
    double first = high / other.high;
    if (!Double.isFinite(first) || other.high == 0) {
      return of(first);
    }
    DoubleDouble rest = minus(other.times(of(first)));
    double second = rest.high / other.high;
    DoubleDouble smaller = rest.minus(other.times(of(second)));
    double third = smaller.high / other.high;
    return quickTwoSum(first, second).plus(of(third));
  }

  public double toDouble() {
    return high + low;
  }

  @Override
  public int compareTo(DoubleDouble other) {
    int upper = Double.compare(high, other.high);
    return upper != 0 ? upper : Double.compare(low, other.low);
  }

  private static DoubleDouble twoSum(double a, double b) {
    double sum = a + b;
    double part = sum - a;
    return new DoubleDouble(sum, (a - (sum - part)) + (b - part));
  }

  private static DoubleDouble quickTwoSum(double larger, double smaller) {
    double sum = larger + smaller;
    return new DoubleDouble(sum, smaller - (sum - larger));
  }
}
