package wherefrom.workings.catalogue.accept;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import wherefrom.workings.Result;
import wherefrom.workings.catalogue.Ask;

/**
 * The uncertainty counts against whoever claims (ISO 14253-1:2017, from two secondary texts): what
 * is shown of a limit never lets in a reading that the limit itself leaves undecided.
 */
class ShownLimitsTest {
  private static BigDecimal shown(Result result, String key) {
    return new BigDecimal(result.getValue(key).text().split(" ")[0]);
  }

  /** u = 0.000131 in: g = 0.000216 in, so 0.0010 + g = 0.00121615 and 0.0025 − g = 0.00228385. */
  @Test
  void acceptanceIsShownInwardAndRejectionOutward() {
    Result result =
        Ask.result("accept", "reading=0.0020in±0.000131in", "lower=0.0010in", "upper=0.0025in");
    assertThat(result.getValue("accept-from").text()).isEqualTo("0.00122 in");
    assertThat(result.getValue("accept-to").text()).isEqualTo("0.00228 in");
    assertThat(result.getValue("reject-below").text()).isEqualTo("0.00078 in");
    assertThat(result.getValue("reject-above").text()).isEqualTo("0.00272 in");
    assertThat(result.getValue("guard-band").text()).isEqualTo("0.00022 in");
  }

  @Test
  void aLimitThatNeedsNoRoundingIsShownAsItIs() {
    Result result =
        Ask.result("accept", "reading=0.20mm", "uncertainty=0.1mm", "lower=0.10mm", "upper=0.60mm");
    assertThat(result.getValue("accept-from").text()).isEqualTo("0.2650 mm");
    assertThat(result.getValue("accept-to").text()).isEqualTo("0.4350 mm");
  }

  @Test
  void aReadingWithinWhatIsShownIsAcceptedAndOneOutsideRejected() {
    SplittableRandom random = new SplittableRandom(14253);
    for (int run = 0; run < 2_000; run++) {
      boolean inch = random.nextBoolean();
      String unit = inch ? "in" : "mm";
      double lower = (inch ? 0.001 : 0.025) * (1 + random.nextDouble());
      double upper = lower * (2 + random.nextDouble());
      double u = lower * 0.1 * random.nextDouble();
      String limits =
          String.format(
              Locale.ROOT,
              "lower=%.7f%s upper=%.7f%s uncertainty=%.9f%s",
              lower,
              unit,
              upper,
              unit,
              u,
              unit);
      Result any = Ask.result("accept", (limits + " reading=0" + unit).split(" "));
      says(limits, shown(any, "accept-from"), unit, "accept");
      says(limits, shown(any, "accept-to"), unit, "accept");
      BigDecimal step = new BigDecimal(inch ? "0.00001" : "0.0001");
      says(limits, shown(any, "reject-above").add(step), unit, "reject");
      says(limits, shown(any, "reject-below").subtract(step), unit, "reject");
    }
  }

  private static void says(String limits, BigDecimal reading, String unit, String decision) {
    String[] texts = (limits + " reading=" + reading.toPlainString() + unit).split(" ");
    assertThat(Ask.result("accept", texts).findNote(decision))
        .as("%s %s", limits, reading)
        .isPresent();
  }
}
