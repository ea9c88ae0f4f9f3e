package wherefrom.workings.catalogue.accept;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The chance to lie within the limits, and what the guard band promises, against a Monte Carlo run
 * (JCGM 101:2008, normal errors) on seeded readings. The run's own error is that of a counted
 * share: √(p·(1−p)/N).
 */
class AcceptanceMonteCarloTest {
  private static final int SETS = 300;
  private static final int DRAWS = 4_000;
  private static final double ERRORS = 5;

  private static OptionalDouble of(double limit) {
    return OptionalDouble.of(limit);
  }

  @Test
  void theChanceToLieWithinIsTheShareOfTrueValuesWithin() {
    Random random = new Random(29);
    double sum = 0;
    for (int i = 0; i < SETS; i++) {
      double u = 0.001 + 0.005 * random.nextDouble();
      double upper = 0.01 + 0.03 * random.nextDouble();
      double reading = -0.01 + (upper + 0.02) * random.nextDouble();
      boolean oneSided = i % 4 == 0;
      OptionalDouble lower = oneSided ? OptionalDouble.empty() : of(0);
      double chance = new Acceptance(reading, u, lower, of(upper)).probability();
      int within = 0;
      for (int n = 0; n < DRAWS; n++) {
        double truth = reading + u * random.nextGaussian();
        within += (oneSided || truth >= 0) && truth <= upper ? 1 : 0;
      }
      double off = (double) within / DRAWS - chance;
      double error = Math.sqrt(Math.max(chance * (1 - chance), 1.0 / DRAWS) / DRAWS);
      assertThat(Math.abs(off)).as("set %d, chance %s", i, chance).isLessThan(ERRORS * error);
      sum += off;
    }
    assertThat(Math.abs(sum / SETS)).isLessThan(ERRORS * 0.5 / Math.sqrt((double) DRAWS * SETS));
  }

  /** ISO 14253-1:2017 (secondary texts): at most one in twenty of what is accepted lies outside. */
  @Test
  void aPartAtItsLimitIsAcceptedAndOneWithinRejectedAtMostOnceInTwenty() {
    Random random = new Random(31);
    for (int i = 0; i < SETS; i++) {
      double u = 0.001 + 0.002 * random.nextDouble();
      double upper = 8 * u + 0.02 * random.nextDouble();
      int accepted = 0;
      int rejected = 0;
      for (int n = 0; n < DRAWS; n++) {
        double reading = upper + u * random.nextGaussian();
        switch (new Acceptance(reading, u, of(0), of(upper)).decision()) {
          case ACCEPT -> accepted++;
          case REJECT -> rejected++;
          case UNDECIDED -> {}
        }
      }
      double most = DRAWS * 0.05 + ERRORS * Math.sqrt(DRAWS * 0.05 * 0.95);
      assertThat((double) accepted).isBetween(1.0, most);
      assertThat((double) rejected).isBetween(1.0, most);
    }
  }
}
