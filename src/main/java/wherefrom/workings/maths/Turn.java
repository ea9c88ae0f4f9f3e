package wherefrom.workings.maths;

/** Sine and cosine of angles in degrees, to about 31 digits. Whole right angles come out exact. */
final class Turn {
  private static final DoubleDouble PER_DEGREE = DoubleDouble.PI.dividedBy(DoubleDouble.of(180));
  private static final int LAST_TERM = 31;

  private Turn() {}

  static DoubleDouble sine(DoubleDouble degrees) {
    long quarter = quarters(degrees);
    DoubleDouble rest = radians(degrees, quarter);
    return switch (Math.floorMod(quarter, 4)) {
      case 0 -> sineSeries(rest);
      case 1 -> cosineSeries(rest);
      case 2 -> sineSeries(rest).negated();
      default -> cosineSeries(rest).negated();
    };
  }

  static DoubleDouble cosine(DoubleDouble degrees) {
    return sine(degrees.plus(DoubleDouble.of(90)));
  }

  private static long quarters(DoubleDouble degrees) {
    return Math.round(degrees.high() / 90);
  }

  private static DoubleDouble radians(DoubleDouble degrees, long quarter) {
    return degrees.minus(DoubleDouble.of(90.0 * quarter)).times(PER_DEGREE);
  }

  private static DoubleDouble sineSeries(DoubleDouble x) {
    return series(x, x, 1);
  }

  private static DoubleDouble cosineSeries(DoubleDouble x) {
    return series(DoubleDouble.of(1), x, 0);
  }

  /** The power series whose first term has the given power of x. */
  private static DoubleDouble series(DoubleDouble first, DoubleDouble x, int power) {
    DoubleDouble minusSquare = x.times(x).negated();
    DoubleDouble term = first;
    DoubleDouble sum = first;
    for (int p = power + 2; p <= LAST_TERM; p += 2) {
      term = term.times(minusSquare).dividedBy(DoubleDouble.of((double) p * (p - 1)));
      sum = sum.plus(term);
    }
    return sum;
  }
}
