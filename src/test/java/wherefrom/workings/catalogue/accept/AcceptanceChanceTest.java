package wherefrom.workings.catalogue.accept;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wherefrom.workings.catalogue.Big;

/**
 * The chance to lie within the limits against the normal distribution's power series, Φ(z) = 1/2 +
 * φ(z)·Σ z^(2k+1)/(1·3·5…(2k+1)), summed to 50 digits. A chance is a share of 1, so the error is
 * looked at as such.
 */
public class AcceptanceChanceTest {
  private static final int DRAWS = 10_000;
  private static final double MOST = 1e-12;

  /** The series' sum without the factor φ(z): all its terms have one sign, so nothing cancels. */
  private static Big below(double z) {
    Big x = new Big(new java.math.BigDecimal(z));
    Big square = x.times(x);
    Big term = x;
    Big sum = x;
    for (long k = 1; term.abs().value().doubleValue() > 1e-45; k++) {
      term = term.times(square).over(2 * k + 1);
      sum = sum.plus(term);
    }
    Big density = exponential(square.over(-2)).over(root(Big.PI.times(2)));
    return Big.of("0.5").plus(density.times(sum));
  }

  private static Big exponential(Big x) {
    return new Big(ch.obermuhlner.math.big.BigDecimalMath.exp(x.value(), Big.DIGITS));
  }

  private static Big root(Big x) {
    return new Big(x.value().sqrt(Big.DIGITS));
  }

  @Test
  void agreesWithTheSeriesOnTenThousandReadings() {
    Random random = new Random(41);
    double worst = 0;
    for (int i = 0; i < DRAWS; i++) {
      double u = 0.001 + 0.004 * random.nextDouble();
      double value = 0.02 * random.nextDouble();
      double lower = value - 6 * u * random.nextDouble();
      double upper = value + (-3 + 9 * random.nextDouble()) * u;
      if (upper < lower) {
        continue;
      }
      Acceptance acceptance =
          new Acceptance(value, u, OptionalDouble.of(lower), OptionalDouble.of(upper));
      Big expected = below((upper - value) / u).minus(below((lower - value) / u));
      double off = acceptance.probability() - expected.value().doubleValue();
      worst = Math.max(worst, Math.abs(off));
    }
    assertThat(worst).isLessThan(MOST);
  }
}
