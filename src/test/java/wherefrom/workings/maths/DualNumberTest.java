package wherefrom.workings.maths;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import ch.obermuhlner.math.big.BigDecimalMath;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Random;
import org.hipparchus.analysis.differentiation.Gradient;
import org.junit.jupiter.api.Test;

class DualNumberTest {
  private static final MathContext DIGITS = new MathContext(60);
  private static final int RUNS = 10_000;

  private static DoubleDouble random(Random random) {
    double high = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(8) - 4);
    return DoubleDouble.of(high).plus(DoubleDouble.of(high * 1e-17 * random.nextDouble()));
  }

  /** The exact sum of both parts. */
  private static BigDecimal exact(DoubleDouble number) {
    return new BigDecimal(number.high()).add(new BigDecimal(number.low()));
  }

  private static double relative(DoubleDouble got, BigDecimal expected) {
    return exact(got).subtract(expected).divide(expected, DIGITS).abs().doubleValue();
  }

  @Test
  void arithmeticKeepsThirtyDigits() {
    Random random = new Random(1);
    for (int i = 0; i < RUNS; i++) {
      DoubleDouble a = random(random);
      DoubleDouble b = random(random);
      BigDecimal x = exact(a);
      BigDecimal y = exact(b);
      assertThat(relative(a.plus(b), x.add(y))).isLessThan(1e-28);
      assertThat(relative(a.minus(b), x.subtract(y))).isLessThan(1e-28);
      assertThat(relative(a.times(b), x.multiply(y))).isLessThan(1e-30);
      assertThat(relative(a.dividedBy(b), x.divide(y, DIGITS))).isLessThan(1e-30);
    }
  }

  @Test
  void sineAndCosineKeepTwentyEightDigits() {
    Random random = new Random(2);
    BigDecimal perDegree = BigDecimalMath.pi(DIGITS).divide(BigDecimal.valueOf(180), DIGITS);
    for (int i = 0; i < 2_000; i++) {
      BigDecimal degrees = BigDecimal.valueOf(random.nextInt(72_000_000) - 36_000_000, 5);
      BigDecimal radians = degrees.multiply(perDegree, DIGITS);
      DoubleDouble d = DoubleDouble.of(degrees);
      assertThat(off(Turn.sine(d), BigDecimalMath.sin(radians, DIGITS))).isLessThan(1e-29);
      assertThat(off(Turn.cosine(d), BigDecimalMath.cos(radians, DIGITS))).isLessThan(1e-29);
    }
  }

  private static double off(DoubleDouble got, BigDecimal expected) {
    return exact(got).subtract(expected).abs().doubleValue();
  }

  @Test
  void rightAnglesComeOutExact() {
    assertThat(Turn.cosine(DoubleDouble.of(90)).toDouble()).isZero();
    assertThat(Turn.sine(DoubleDouble.of(90)).toDouble()).isEqualTo(1);
    assertThat(Turn.sine(DoubleDouble.of(180)).toDouble()).isZero();
  }

  @Test
  void slopesAgreeWithAReferenceLibrary() {
    Random random = new Random(3);
    for (int i = 0; i < RUNS; i++) {
      double x = 1 + 9 * random.nextDouble();
      double y = 1 + 9 * random.nextDouble();
      double z = 5 + 70 * random.nextDouble();
      DualNumber got =
          formula(
              DualNumber.ofInput(DoubleDouble.of(x), 0, 3),
              DualNumber.ofInput(DoubleDouble.of(y), 1, 3),
              DualNumber.ofInput(DoubleDouble.of(z), 2, 3));
      Gradient expected =
          reference(
              Gradient.variable(3, 0, x), Gradient.variable(3, 1, y), Gradient.variable(3, 2, z));
      assertThat(got.toDouble()).isCloseTo(expected.getValue(), within(1e-11));
      for (int k = 0; k < 3; k++) {
        double slope = expected.getPartialDerivative(k);
        assertThat(got.slope(k)).isCloseTo(slope, within(1e-11 * (1 + Math.abs(slope))));
      }
    }
  }

  private static DualNumber formula(DualNumber x, DualNumber y, DualNumber z) {
    DualNumber part = x.squared().times(z.cosineOfDegrees()).dividedBy(y);
    DualNumber rest = y.minus(x).abs().max(DualNumber.of("0.5")).times(z.sineOfDegrees());
    return part.plus(rest).minus(x.min(y).negated().times(3));
  }

  private static Gradient reference(Gradient x, Gradient y, Gradient z) {
    Gradient radians = z.multiply(Math.PI / 180);
    Gradient part = x.multiply(x).multiply(radians.cos()).divide(y);
    Gradient apart = y.subtract(x).abs();
    Gradient far = apart.getValue() < 0.5 ? apart.getField().getOne().multiply(0.5) : apart;
    Gradient least = y.getValue() < x.getValue() ? y : x;
    return part.add(far.multiply(radians.sin())).add(least.multiply(3));
  }

  @Test
  void whatRoundingLeavesBetweenEqualFiguresIsNoDifference() {
    // Inches come in as millimetres: 2.749 less 2.744, twice, and 0.010 are one size.
    DualNumber wear = DualNumber.of("69.8246").minus(DualNumber.of("69.6976")).times(2);
    DualNumber step = DualNumber.of("0.010").times(DualNumber.of("25.4"));
    assertThat(wear.isLessThan(step)).isFalse();
    assertThat(step.isLessThan(wear)).isFalse();
    assertThat(step.isLessThan(wear.plus(DualNumber.of("0.000000001")))).isTrue();
    assertThat(wear.minus(DualNumber.of("0.000000001")).isLessThan(step)).isTrue();
  }
}
