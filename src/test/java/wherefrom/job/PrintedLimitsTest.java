package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Judgement;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.inspection.measure.Station;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.parts.Place;
import wherefrom.quantity.Dimension;
import wherefrom.workings.catalogue.accept.Acceptance.Ruling;

/**
 * Limits as they stand in print, each typed with its source and put to three sets of readings: one
 * that keeps it, one that misses it, and one so near it that the tool cannot say (ISO 14253-1:2017,
 * secondary texts). Each is the limit of its manual's engine and of no other.
 */
class PrintedLimitsTest {
  private final BenchJob bench = BenchJob.v8();
  private final Instruments tools = new Instruments(bench.job);
  private final Measuring measuring = new Measuring(bench.job);

  @BeforeEach
  void listTools() {
    tools.list("mic", Dimension.LENGTH, "0.0001", "0.0001", "0.0001");
    tools.list("scale", Dimension.FORCE, "0.5", "0.5", "0.5");
    tools.size("bore", "3.8700", "test");
    tools.size("main-journal", "2.4780", "TM 10-3930-653-14&P");
    tools.size("rod-journal", "2.2480", "test");
  }

  private Subject subject(ReadingPlan plan) {
    for (Feature feature : Feature.values()) {
      if (feature.key().equals(plan.of())) {
        return new Subject.AFeature(feature, feature.where(bench.job.state().layout()).get(0));
      }
    }
    for (Place place : bench.job.state().places()) {
      if (place.kind().key().equals(plan.of())) {
        return Subject.ofPart(bench.item(place.key()));
      }
    }
    throw new AssertionError(plan.of());
  }

  private Ruling decide(ReadingPlan plan, String result, String readings) {
    Map<String, List<String>> taken = new LinkedHashMap<>();
    String[] sizes = readings.split(" ");
    for (int at = 0; at < plan.stations().size(); at++) {
      Station station = plan.stations().get(at);
      taken.put(station.key(), List.of(sizes[Math.min(at, sizes.length - 1)]));
    }
    String tool = plan.stations().get(0).dimension() == Dimension.FORCE ? "scale" : "mic";
    Measuring.Answer answer =
        measuring.take(new Measuring.Entry(subject(plan), plan.key(), tool, taken, true, ""));
    assertThat(answer).isInstanceOf(Measuring.Answer.Kept.class);
    return ((Measuring.Answer.Kept) answer)
        .result().judgements().stream()
            .filter(one -> one.limit().result().equals(result))
            .map(Judgement::decision)
            .findFirst()
            .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "-",
      value = {
        "pushrod-runout|value|-|0.002|0.0015|0.0025|0.0020|TM 10-3930-653-14&P, 4-41",
        "pushrod-runout|value|-|0.008|0.0075|0.0085|0.0080|TM 9-2815-253-24, 3-26.2",
        "pushrod-runout|value|-|0.035|0.0340|0.0360|0.0350|TM 9-2815-225-34&P, 3-196",
        "lobe-lift|lift|0.2735|-|1.2935 1.0000|1.2720 1.0000|1.2735 1.0000"
            + "|TM 5-4210-229-14&P, 6-19: 0.2935 in less 0.020 in",
        "chain-deflection|value|-|0.810|0.8050|0.8150|0.8100|TM 9-2815-237-34, 2-28",
        "valve-margin|smallest|0.031|-|0.0320 0.0330 0.0325|0.0320 0.0300 0.0330"
            + "|0.0320 0.0310 0.0330|TM 5-1940-322-24, WP 0160-4",
        "spring-square|value|-|0.059|0.0580|0.0600|0.0590|TM 10-3930-653-14&P",
        "spring-square|value|-|0.039|0.0380|0.0400|0.0390|TM 5-1940-322-24, WP 0160-4",
        "spring-free|value|1.6606|-|1.6700|1.6500|1.6606"
            + "|NAVEDTRA 14076, ch. 3: 3 % off 1.712 in of TM 10-4320-344-24",
        "spring-load|value|120.8|-|124|117|121|TM 9-2815-247-34, WP 0072: 13.42 lb off 134.2 lb",
        "lifter-bore|smallest|0.8426|0.8440|0.8430|0.8420|0.8426"
            + "|TM 10-3930-653-14&P: 0.0006 to 0.0020 in over a lifter of 0.842 in (size invented)",
        "ring-gap|largest|-|0.039|0.0098 0.0157|0.0098 0.0400|0.0098 0.0390"
            + "|TM 10-3930-653-14&P",
        "bore|taper|-|0.0015|3.8710 3.8705 3.8700 3.8700|3.8730 3.8710 3.8700 3.8700"
            + "|3.8715 3.8705 3.8700 3.8700|TM 5-4320-300-14, 6-45",
        "bore|out-of-round|-|0.0020|3.8710 3.8700 3.8700 3.8700|3.8730 3.8700 3.8700 3.8700"
            + "|3.8720 3.8700 3.8700 3.8700|TM 55-1905-219-14-10, 5-368",
        "head-flatness|largest|-|0.004|0.0010 0.0030 0.0020|0.0010 0.0050 0.0020"
            + "|0.0010 0.0040 0.0020|TM 10-3930-653-14&P",
        "head-flatness|largest|-|0.006|0.0050 0.0010|0.0010 0.0070 0.0020|0.0060 0.0010"
            + "|TM 5-3820-256-24-5, p. 18",
        "deck-flatness|largest|-|0.006|0.0010 0.0050|0.0010 0.0070|0.0060 0.0010"
            + "|TM 5-4320-300-14, 6-45",
        "main-journal|wear|-|0.0012|2.4775|2.4760|2.4768|TM 10-3930-653-14&P",
        "rod-journal|out-of-round|-|0.0005|2.2480 2.2479 2.2480 2.2479|2.2480 2.2470"
            + "|2.2480 2.2475 2.2480 2.2480|TM 5-3805-262-34, 4-24",
        "rod-journal|taper|-|0.0005|2.2480 2.2480 2.2479 2.2479|2.2480 2.2480 2.2470 2.2470"
            + "|2.2480 2.2480 2.2475 2.2480|TM 5-3805-262-34, 4-24",
        "rod-side-clearance|value|0.0067|0.0157|0.0100|0.0165|0.0157|TM 10-3930-653-14&P",
        "rod-side-clearance|value|0.005|0.020|0.012|0.021|0.020|TM 5-4310-354-14, 7-64",
        "pump-cover|value|0.0020|0.0070|0.0040|0.0080|0.0070|TM 5-4310-354-14, table 5-2",
        "pump-body|idler|0.0020|0.0070|0.0030|0.0030 0.0080|0.0030 0.0070"
            + "|TM 5-4310-354-14, table 5-2",
        "seat-width|largest|0.067|0.075|0.0700 0.0720|0.0700 0.0770|0.0700 0.0750"
            + "|TM 10-3930-653-14&P",
        "ring-side|top|0.0016|0.0029|0.0022|0.0040|0.0029|TM 10-3930-653-14&P",
        "ring-gap|top|0.0160|0.0275|0.0200 0.0100|0.0290 0.0100|0.0275 0.0100"
            + "|TM 5-3895-370-14&P, 5-283",
        "ring-gap|second|0.0100|0.0215|0.0300 0.0150|0.0300 0.0230|0.0300 0.0215"
            + "|TM 5-3895-370-14&P, 5-283",
        "deck-height|front|-0.004|0.019|0.0100|-0.0050|-0.0040|TM 5-6640-212-14, table 5-4",
        "flywheel-runout|face|-|0.0039|0.0030|0.0050|0.0039|TM 10-3930-653-14&P",
        "flywheel-runout|edge|-|0.005|0.0010 0.0040|0.0010 0.0060|0.0010 0.0050"
            + "|TM 5-2420-230-24-2, V-7",
        "main-bow|value|-|0.0020|0.0030|0.0050|0.0040|TM 10-3930-653-14&P: half of the swing",
        "rod-journal|out-of-round|-|0.002|2.2480 2.2470|2.2480 2.2450|2.2480 2.2460"
            + "|TM 9-6115-604-34, 9-62",
      })
  void printedLimitAcceptsRejectsAndLeavesOpen(
      String key,
      String result,
      String least,
      String most,
      String keeps,
      String misses,
      String near,
      String source) {
    ReadingPlan plan = ReadingPlans.find(key).orElseThrow();
    assertThat(
            tools.limit(key, result, least == null ? "" : least, most == null ? "" : most, source))
        .isInstanceOf(Instruments.Answer.Kept.class);
    assertThat(decide(plan, result, keeps)).isEqualTo(Ruling.ACCEPT);
    assertThat(decide(plan, result, misses)).isEqualTo(Ruling.REJECT);
    assertThat(decide(plan, result, near)).isEqualTo(Ruling.UNDECIDED);
    assertThat(bench.job.state().measures().limits())
        .anyMatch(limit -> limit.source().equals(source));
  }
}
