package wherefrom.workings.catalogue.accept;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Set;
import org.junit.jupiter.api.Test;
import wherefrom.workings.Note;
import wherefrom.workings.Result;
import wherefrom.workings.catalogue.Ask;

class AcceptanceTest {
  /** 0.0001 in resolution: resolution, instrument, repeat, ±2 °C on 2.610 in. */
  private static UncertaintyBudget reading(double resolution, double others, double length) {
    return UncertaintyBudget.empty()
        .withLimits("resolution", resolution)
        .withLimits("instrument", others)
        .withLimits("repeat", others)
        .withTemperature("temperature", length, 11.5e-6, 2);
  }

  private static final UncertaintyBudget INCH = reading(0.00005, 0.0001, 2.610);

  @Test
  void endGaugeExampleOfTheGuide() {
    // JCGM 100:2008, H.1: end gauge, components in nm, combined 32.
    UncertaintyBudget gauge =
        UncertaintyBudget.empty()
            .with("standard", 25)
            .with("repeated observations", 5.8)
            .with("comparator, random", 3.9)
            .with("comparator, systematic", 6.7)
            .with("expansion difference", 2.89)
            .with("temperature difference", 16.6);
    assertThat(Math.round(gauge.combined())).isEqualTo(32);
    assertThat(gauge.combined()).isCloseTo(31.66, within(0.005));
  }

  @Test
  void clearanceFromTwoMicrometerReadings() {
    // Own example on the rules of JCGM 100:2008.
    assertThat(INCH.combined()).isCloseTo(0.0000933, within(5e-8));
    assertThat(INCH.minus(INCH, Set.of()).combined()).isCloseTo(0.000132, within(5e-7));
    assertThat(INCH.minus(INCH, Set.of("instrument")).combined()).isCloseTo(0.000104, within(5e-7));
    assertThat(Math.sqrt(6) * INCH.combined()).isCloseTo(0.000228, within(5e-7));
    UncertaintyBudget metric = reading(0.0005, 0.002, 66.3);
    assertThat(metric.minus(metric, Set.of()).combined()).isCloseTo(0.00266, within(5e-6));
  }

  @Test
  void oneWallReadingCountsTwice() {
    String u =
        "in±"
            + new java.math.BigDecimal(INCH.combined())
                .setScale(12, java.math.RoundingMode.HALF_UP);
    Result result =
        Ask.result(
            "oil-clearance-one-wall",
            "housing=2.8010" + u,
            "wall=0.0945" + u,
            "journal=2.6100" + u);
    assertThat(result.getValue("clearance").standardUncertainty())
        .isCloseTo(0.000228, within(5e-7));
    assertThat(result.getValue("clearance").findBiggestShare().orElseThrow().inputKey())
        .isEqualTo("wall");
  }

  private static Result judge(String reading) {
    return Ask.result(
        "accept",
        "reading=" + reading,
        "uncertainty=0.000131in",
        "lower=0.0010in",
        "upper=0.0025in");
  }

  private static String word(Result result) {
    return result.notes().stream()
        .filter(note -> note.kind() == Note.Kind.CONCLUSION)
        .map(Note::key)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void acceptUndecidedReject() {
    // ISO 14253-1:2017 (secondary texts): g = 1.65·u. Figures of the example worked out here.
    Result result = judge("0.0022in");
    assertThat(result.getValue("guard-band").value()).isCloseTo(0.000216, within(5e-7));
    assertThat(result.getValue("accept-from").value()).isCloseTo(0.00122, within(5e-6));
    assertThat(result.getValue("accept-to").value()).isCloseTo(0.00228, within(5e-6));
    assertThat(result.getValue("reject-below").value()).isCloseTo(0.00078, within(5e-6));
    assertThat(result.getValue("reject-above").value()).isCloseTo(0.00272, within(5e-6));
    assertThat(word(result)).isEqualTo("accept");
    assertThat(result.getValue("probability").value()).isCloseTo(98.9, within(0.05));
    assertThat(word(judge("0.0023in"))).isEqualTo("undecided");
    assertThat(judge("0.0023in").getValue("probability").value()).isCloseTo(93.7, within(0.05));
    assertThat(word(judge("0.0027in"))).isEqualTo("undecided");
    assertThat(word(judge("0.0028in"))).isEqualTo("reject");
    assertThat(word(judge("0.0007in"))).isEqualTo("reject");
    assertThat(word(judge("0.0011in"))).isEqualTo("undecided");
  }

  @Test
  void metricZone() {
    Result result =
        Ask.result("accept", "reading=0.040mm±0.00262mm", "lower=0.025mm", "upper=0.064mm");
    assertThat(result.getValue("accept-from").value()).isCloseTo(0.0293, within(5e-5));
    assertThat(result.getValue("accept-to").value()).isCloseTo(0.0597, within(5e-5));
    assertThat(word(result)).isEqualTo("accept");
  }

  @Test
  void oneLimitIsEnoughAndNoneIsAskedFor() {
    assertThat(word(Ask.result("accept", "reading=0.9mm±0.01", "upper=1mm"))).isEqualTo("accept");
    assertThat(Ask.answer("accept", "reading=0.9mm±0.01"))
        .isInstanceOf(wherefrom.workings.MissingInputs.class);
    assertThat(Ask.answer("accept", "reading=0.9mm", "upper=1mm"))
        .isInstanceOf(wherefrom.workings.MissingInputs.class);
  }

  @Test
  void tooCoarseAGaugeIsSaid() {
    assertThat(
            Ask.result("accept", "reading=1.5mm±0.5mm", "lower=1mm", "upper=2mm")
                .findNote("too-coarse"))
        .isPresent();
  }
}
