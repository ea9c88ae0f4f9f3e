package wherefrom.inspection.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.ResultValue;
import wherefrom.workings.catalogue.accept.Acceptance.Ruling;

class PlausibilityTest {
  private static Tool tool(String step) {
    return new Tool(
        "gauge",
        Amount.of(step, Unit.INCH),
        Amount.of(step, Unit.INCH),
        Amount.of(step, Unit.INCH));
  }

  private static List<Sample> samples(ReadingPlan plan, String... sizes) {
    List<Sample> samples = new ArrayList<>();
    for (int at = 0; at < sizes.length; at++) {
      samples.add(new Sample(plan.stations().get(at), List.of(Amount.of(sizes[at], Unit.INCH))));
    }
    return samples;
  }

  private static ReadingPlan plan(String key) {
    return ReadingPlans.find(key).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "bore, 3.8710, 3.8910, 3.8780",
    "rod-journal, 2.2400, 2.2200, 2.2370",
    "main-journal, 2.6100, 2.6300, 2.6090",
    "lifter-diameter, 0.8420, 0.8220, 0.8400",
    "stem-diameter, 0.3410, 0.3310, 0.3390",
    "rod-shell-wall, 0.0620, 0.0720, 0.0610",
    "main-housing, 2.8010, 2.8210, 2.8020"
  })
  void oneReadingFarFromItsSistersIsAskedBack(String key, String size, String slip, String worn) {
    ReadingPlan plan = plan(key);
    String[] sizes = new String[plan.stations().size()];
    java.util.Arrays.fill(sizes, size);
    assertThat(Plausibility.askSisters(plan, samples(plan, sizes))).isEmpty();
    sizes[1] = worn;
    assertThat(Plausibility.askSisters(plan, samples(plan, sizes))).isEmpty();
    sizes[1] = slip;
    assertThat(Plausibility.askSisters(plan, samples(plan, sizes)))
        .singleElement()
        .satisfies(
            question -> {
              assertThat(question.kind()).isEqualTo(Question.Kind.FAR_FROM_OTHERS);
              assertThat(question.station()).isEqualTo(plan.stations().get(1).key());
              assertThat(question.sentence()).contains(slip, "from the other readings");
            });
  }

  /** A usual figure is kept, one of a hundred times its size is asked back: own examples. */
  @ParameterizedTest
  @CsvSource({
    "rod-side-clearance, 0.0100, 1.0",
    "thrust-clearance, 0.0060, 0.6",
    "thrust-washer, 0.0950, 9.5",
    "pump-cover, 0.0030, 0.3",
    "pump-body, 0.0040, 0.4",
    "pump-tip, 0.0060, 0.6",
    "relief-free, 1.900, 19",
    "installed-height, 1.650, 16.5",
    "seat-width, 0.0700, 7",
    "seat-runout, 0.0015, 0.15",
    "stem-height, 1.900, 19",
    "deck-height, 0.0200, 2",
    "ring-side, 0.0022, 0.22",
    "oil-rail-gap, 0.0150, 1.5",
    "flywheel-runout, 0.0040, 0.4",
    "damper-runout, 0.0080, 0.8",
    "core-plug, 1.5000, 15",
    "guide-bore, 0.3430, 3.43",
    "rocker-bore, 0.7500, 7.5",
    "cam-journal, 1.9000, 19",
    "pin-diameter, 0.9270, 9.27"
  })
  void whatCannotBeOfItsKindIsAskedBack(String key, String usual, String slip) {
    ReadingPlan plan = plan(key);
    Sample right = samples(plan, usual).get(0);
    assertThat(Plausibility.ask(plan, right, tool("0.0001"), new double[0])).isEmpty();
    Sample wrong = samples(plan, slip).get(0);
    assertThat(Plausibility.ask(plan, wrong, tool("0.0001"), new double[0]))
        .extracting(Question::kind)
        .containsAnyOf(Question.Kind.IMPLAUSIBLE, Question.Kind.UNIT_SLIP);
  }

  @Test
  void twoReadingsAloneSayNothingOfEachOther() {
    ReadingPlan plan = plan("bore");
    assertThat(Plausibility.askSisters(plan, samples(plan, "3.8710", "3.8910"))).isEmpty();
    assertThat(Plausibility.askSisters(plan, samples(plan, "3.8710", "3.8910", "3.8710")))
        .hasSize(1);
  }

  @Test
  void readingsOfDifferentThingsMayDiffer() {
    ReadingPlan rings = plan("ring-gap");
    assertThat(Plausibility.askSisters(rings, samples(rings, "0.016", "0.040"))).isEmpty();
  }

  @Test
  void aBoreFarFromTheOtherBoresIsAskedBack() {
    ReadingPlan plan = plan("bore");
    double[] others = {98.3, 98.32, 98.31};
    Sample slip = samples(plan, "3.8910").get(0);
    Sample worn = samples(plan, "3.8770").get(0);
    assertThat(Plausibility.ask(plan, slip, tool("0.0001"), others)).hasSize(1);
    assertThat(Plausibility.ask(plan, worn, tool("0.0001"), others)).isEmpty();
  }

  /**
   * Six readings that agree on a gauge of half-thou steps: a taper of 0.0002 in hides in one step,
   * so it cannot be said that there is none (JCGM 100:2008, F.2.2.1; ISO 14253-1).
   */
  @Test
  void sixEqualReadingsOfACoarseGaugeDoNotMakeAFineTaper() {
    ReadingPlan plan = plan("bore");
    Limit limit =
        new Limit(
            "bore", "taper", Optional.empty(), Optional.of(Amount.of("0.0002", Unit.INCH)), "x");
    List<Sample> samples =
        samples(plan, "3.8705", "3.8705", "3.8705", "3.8705", "3.8705", "3.8705");
    for (String result : List.of("taper", "out-of-round")) {
      ResultValue coarse =
          find(Results.of(plan, samples, tool("0.0005"), Optional.empty()), result);
      assertThat(coarse.value()).isZero();
      assertThat(coarse.standardUncertainty()).isGreaterThan(0.0005 * 0.29 * Math.sqrt(2));
      assertThat(limit.judge(coarse).decision()).isEqualTo(Ruling.UNDECIDED);
    }
    // Either way round through the plan's other shapes: a spread, a lift.
    ReadingPlan stem = plan("stem-diameter");
    ResultValue spread =
        find(
            Results.of(
                stem,
                samples(stem, "0.3410", "0.3410", "0.3410"),
                tool("0.0005"),
                Optional.empty()),
            "spread");
    assertThat(spread.standardUncertainty()).isGreaterThan(0.0005 * 0.29 * Math.sqrt(2) - 1e-6);
  }

  private static ResultValue find(List<ResultValue> values, String key) {
    return values.stream().filter(value -> value.key().equals(key)).findFirst().orElseThrow();
  }
}
