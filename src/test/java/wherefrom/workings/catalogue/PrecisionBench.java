package wherefrom.workings.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Prints each working's worst relative error against 50-digit arithmetic over 20,000 inputs. */
@Tag("bench")
class PrecisionBench {
  private static final int DRAWS = 20_000;

  @Test
  void worstRelativeErrors() {
    for (Sample sample : Samples.all()) {
      double worst = PrecisionTest.worstError(sample, DRAWS);
      System.out.printf(Locale.ROOT, "%-24s %.2e%n", sample.key(), worst);
      assertThat(worst).isLessThanOrEqualTo(1e-12);
    }
  }
}
