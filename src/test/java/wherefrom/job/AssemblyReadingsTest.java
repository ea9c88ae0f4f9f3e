package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.job.pages.RecordTable;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.tables.JobTables;
import wherefrom.quantity.Dimension;
import wherefrom.workings.ResultValue;
import wherefrom.workings.catalogue.accept.Acceptance.Ruling;

/** What is read while the engine goes together, from the reading to the record. */
class AssemblyReadingsTest {
  private final BenchJob bench = BenchJob.v8();
  private final Instruments tools = new Instruments(bench.job);

  @BeforeEach
  void listTool() {
    tools.list("gauge", Dimension.LENGTH, "0.001", "0.001", "0.001");
  }

  private MeasuredResult take(Feature feature, String where, String plan, String... sizes) {
    ReadingPlan readings = ReadingPlans.find(plan).orElseThrow();
    Map<String, List<String>> taken = new LinkedHashMap<>();
    for (int at = 0; at < sizes.length; at++) {
      taken.put(readings.stations().get(at).key(), List.of(sizes[at]));
    }
    Subject subject = new Subject.AFeature(feature, where);
    Measuring.Answer came =
        new Measuring(bench.job).take(new Measuring.Entry(subject, plan, "gauge", taken, true, ""));
    assertThat(came).isInstanceOf(Measuring.Answer.Kept.class);
    return ((Measuring.Answer.Kept) came).result();
  }

  /** A piston with two rings has no third groove: what was read stands for itself. */
  @Test
  void whatTheEngineLacksKeepsNoReadingFromBeingJudged() {
    tools.limit("ring-side", "top", "0.0015", "0.0040", "Manual, page 6-3");
    tools.limit("ring-side", "largest", "", "0.0040", "Manual, page 6-3");
    MeasuredResult side = take(Feature.RINGS, "B3", "ring-side", "0.0100", "0.0020");
    assertThat(side.isWhole()).isFalse();
    assertThat(side.judgements())
        .extracting(judged -> judged.value().key() + " " + judged.decision())
        .containsExactly("top " + Ruling.REJECT);
  }

  /** 1.680 in where 1.650 in is wanted: a shim of 0.030 in; own example. */
  @Test
  void theShimIsWhatTheHeightIsAboveTheWantedOne() {
    MeasuredResult before = take(Feature.VALVE_SEAT, "3EX", "installed-height", "1.680");
    assertThat(before.findValue("shim")).isEmpty();
    tools.size("installed-height", "1.650", "Manual, page 6-3");
    MeasuredResult after =
        bench
            .job
            .state()
            .measures()
            .findResult(new Subject.AFeature(Feature.VALVE_SEAT, "3EX"), "installed-height")
            .orElseThrow();
    ResultValue shim = after.findValue("shim").orElseThrow();
    assertThat(shim.value()).isCloseTo(0.030, within(1e-9));
    assertThat(shim.standardUncertainty())
        .isEqualTo(after.findValue("value").orElseThrow().standardUncertainty());
  }

  /** A plug of 1.506 in in a hole of 1.500 in is pressed by 0.006 in; u in quadrature. */
  @Test
  void thePressOfAPlugIsPlugLessHole() {
    MeasuredResult plug = take(Feature.CORE_PLUGS, "left", "core-plug", "1.500", "1.506");
    ResultValue press = plug.findValue("press").orElseThrow();
    double one =
        plug.samples()
            .get(0)
            .measured(plug.tool())
            .standardUncertainty()
            .orElseThrow()
            .number()
            .doubleValue();
    double other =
        plug.samples()
            .get(1)
            .measured(plug.tool())
            .standardUncertainty()
            .orElseThrow()
            .number()
            .doubleValue();
    assertThat(press.value()).isCloseTo(0.006, within(1e-9));
    assertThat(press.standardUncertainty()).isCloseTo(Math.hypot(one, other), within(1e-12));
  }

  @Test
  void eachRingHasItsOwnLimit() {
    tools.limit("ring-gap", "top", "0.0160", "", "Manual, page 6-3");
    tools.limit("ring-gap", "second", "0.0100", "", "Manual, page 6-3");
    MeasuredResult gaps = take(Feature.RINGS, "B3", "ring-gap", "0.0200", "0.0050");
    assertThat(gaps.judgements())
        .extracting(one -> one.value().key() + " " + one.decision())
        .containsExactly("top " + Ruling.ACCEPT, "second " + Ruling.REJECT);
  }

  @Test
  void aDeckHeightAboveTheDeckIsANegativeReadingOfItsCylinder() {
    tools.limit("deck-height", "front", "-0.004", "0.019", "TM 5-6640-212-14, table 5-4");
    MeasuredResult deck = take(Feature.BORE, "B5", "deck-height", "-0.010", "0.002");
    assertThat(deck.judgements().get(0).decision()).isEqualTo(Ruling.REJECT);
    assertThat(BuildRecord.of(bench.job).find(RecordTable.MEASURED).rows().get(0).cells().get(0))
        .isEqualTo("cylinder 5, cylinder bore, Piston below the deck");
  }

  @Test
  void whatIsReadStandsInTheTableOfReadings() {
    take(Feature.OIL_PUMP, "", "pump-body", "0.003", "0.004");
    take(Feature.FLYWHEEL, "", "flywheel-runout", "0.002", "0.003");
    take(Feature.DAMPER, "", "damper-runout", "0.004", "0.005");
    take(Feature.CRANK, "", "thrust-clearance", "0.006", "0.005");
    assertThat(JobTables.of(bench.job).get(1).rows().toString())
        .contains("pump-body", "flywheel-runout", "damper-runout", "thrust-clearance");
  }
}
