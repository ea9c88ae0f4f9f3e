package wherefrom.job.numbers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.job.BenchJob;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.job.pages.RecordTable;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.tables.JobTables;
import wherefrom.quantity.Dimension;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;

/** Ring filing from the first reading to the last tick, with printed rules. */
class RingFilingTest {
  private final BenchJob bench = BenchJob.v8();
  private final RingFiling filing = new RingFiling(bench.job);

  @BeforeEach
  void listTools() {
    Instruments tools = new Instruments(bench.job);
    // A set of feelers in steps of 0.001 in; the bore gauge reads to 0.0001 in: own example.
    tools.list("feelers", Dimension.LENGTH, "0.001", "0.0002", "0.0005");
    tools.list("gauge", Dimension.LENGTH, "0.0001", "0.0001", "0.0001");
  }

  private void read(Feature feature, String where, String plan, String tool, String... pairs) {
    Map<String, List<String>> readings = new LinkedHashMap<>();
    for (int at = 0; at < pairs.length; at += 2) {
      readings.put(pairs[at], List.of(pairs[at + 1]));
    }
    Subject subject = new Subject.AFeature(feature, where);
    assertThat(
            new Measuring(bench.job)
                .take(new Measuring.Entry(subject, plan, tool, readings, true, "")))
        .isInstanceOf(Measuring.Answer.Kept.class);
  }

  private void bore(String size) {
    read(
        Feature.BORE,
        "B3",
        "bore",
        "gauge",
        "thrust-top",
        size,
        "thrust-middle",
        size,
        "thrust-bottom",
        size,
        "axial-top",
        size,
        "axial-middle",
        size,
        "axial-bottom",
        size);
  }

  private RingGapRow top() {
    return filing.find("B3", Ring.TOP).orElseThrow();
  }

  private static void done(FigureOutcome came) {
    assertThat(came).isInstanceOf(FigureOutcome.Done.class);
  }

  /** 0.004 per inch of a 3 in bore prints as 0.012 in; 0.0035 per inch is 0.0105 in. */
  @ParameterizedTest
  @CsvSource({
    "0.004, 3.0000, 0.0120, printed in a trade quiz: 0.012 in for 3 in",
    "0.0035, 3.0000, 0.0105, Hastings Service Tips P32",
    "0.004, 4.0000, 0.0160, worked out by hand",
  })
  void theWantedGapIsTheRuleTimesTheBore(String rule, String size, double wanted, String source) {
    bore(size);
    done(filing.wantPerBore(Ring.TOP, rule, source));
    assertThat(top().wanted().orElseThrow().value().number().doubleValue())
        .isCloseTo(wanted, within(1e-9));
  }

  @Test
  void aRingIsFiledMeasuredAndTicked() {
    bore("3.8700");
    done(filing.wantPerBore(Ring.TOP, "0.004", ""));
    assertThat(top().state()).isEqualTo(RingGapRow.State.TO_MEASURE);
    read(Feature.RINGS, "B3", "ring-gap", "feelers", "top", "0.012");
    assertThat(top().state()).isEqualTo(RingGapRow.State.TO_FILE);
    assertThat(top().toFileText()).isEqualTo("0.0035 in");
    assertThat(filing.tick("B3", Ring.TOP))
        .isEqualTo(
            new FigureOutcome.Refused("Not done yet. File off 0.0035 in, then measure again."));
    read(Feature.RINGS, "B3", "ring-gap", "feelers", "top", "0.0155");
    assertThat(top().state()).isEqualTo(RingGapRow.State.NEAR);
    done(filing.tick("B3", Ring.TOP));
    assertThat(top().state()).isEqualTo(RingGapRow.State.DONE);
  }

  /** To file is wanted less gap; their uncertainties in quadrature, worked out by hand. */
  @Test
  void theUncertaintyIsOfBothReadings() {
    bore("3.8700");
    done(filing.wantPerBore(Ring.TOP, "0.004", ""));
    read(Feature.RINGS, "B3", "ring-gap", "feelers", "top", "0.012");
    double gap = Math.sqrt((0.0005 * 0.0005 + 0.0002 * 0.0002 + 0.0005 * 0.0005) / 3);
    double swell = 3.87 * 2 * 11.5e-6;
    double bore = Math.sqrt((0.00005 * 0.00005 + 2 * 0.0001 * 0.0001 + swell * swell) / 3);
    assertThat(top().toFile().orElseThrow().standardUncertainty())
        .isCloseTo(Math.hypot(gap, 0.004 * bore), within(1e-8));
  }

  @Test
  void aTickFallsWithAnotherReadingOrAnotherWantedGap() {
    bore("3.8700");
    done(filing.wantGap(Ring.TOP, "0.0150", "Ring maker's sheet 7"));
    read(Feature.RINGS, "B3", "ring-gap", "feelers", "top", "0.018");
    assertThat(top().state()).isEqualTo(RingGapRow.State.WIDE_ENOUGH);
    done(filing.tick("B3", Ring.TOP));
    read(Feature.RINGS, "B3", "ring-gap", "feelers", "top", "0.0185");
    assertThat(top().state()).isEqualTo(RingGapRow.State.WIDE_ENOUGH);
    done(filing.tick("B3", Ring.TOP));
    done(filing.wantGap(Ring.TOP, "0.0220", "Ring maker's sheet 7"));
    assertThat(top().state()).isEqualTo(RingGapRow.State.TO_FILE);
  }

  /** A ring that reads as it did before it was exchanged was never ticked so. */
  @Test
  void aTickIsOfTheReadingThatItWasMadeFor() {
    done(filing.wantGap(Ring.TOP, "0.0150", ""));
    read(Feature.RINGS, "B3", "ring-gap", "feelers", "top", "0.018");
    done(filing.tick("B3", Ring.TOP));
    read(Feature.RINGS, "B3", "ring-gap", "feelers", "top", "0.018", "second", "0.020");
    assertThat(top().state()).as("another ring was read").isEqualTo(RingGapRow.State.DONE);
    read(Feature.RINGS, "B3", "ring-gap", "feelers", "top", "0.012", "second", "0.020");
    bench.job.undo();
    assertThat(top().state()).as("the reading is that one again").isEqualTo(RingGapRow.State.DONE);
    read(Feature.RINGS, "B3", "ring-gap", "feelers", "top", "0.012", "second", "0.020");
    read(Feature.RINGS, "B3", "ring-gap", "feelers", "top", "0.018", "second", "0.020");
    assertThat(top().state()).isEqualTo(RingGapRow.State.WIDE_ENOUGH);
  }

  @Test
  void aTickIsTakenOffAndTakenBackByUndo() {
    done(filing.wantGap(Ring.TOP, "0.0150", ""));
    read(Feature.RINGS, "B3", "ring-gap", "feelers", "top", "0.018");
    done(filing.tick("B3", Ring.TOP));
    filing.untick("B3", Ring.TOP);
    assertThat(top().state()).isEqualTo(RingGapRow.State.WIDE_ENOUGH);
    bench.job.undo();
    assertThat(top().state()).isEqualTo(RingGapRow.State.DONE);
  }

  @Test
  void aGapReadBeforeTheBoreWasHonedIsReadAnew() {
    done(filing.wantGap(Ring.TOP, "0.0150", ""));
    read(Feature.RINGS, "B3", "ring-gap", "feelers", "top", "0.018");
    bench.record(new ChangeMade(0, Change.at(ChangeKind.HONED, "B3")));
    assertThat(top().state()).isEqualTo(RingGapRow.State.TO_MEASURE);
    assertThat(filing.tick("B3", Ring.TOP)).isInstanceOf(FigureOutcome.Refused.class);
  }

  @Test
  void aRuleWithoutABoreAsksForTheBore() {
    done(filing.wantPerBore(Ring.SECOND, "0.004", ""));
    RingGapRow second = filing.find("B3", Ring.SECOND).orElseThrow();
    assertThat(second.state()).isEqualTo(RingGapRow.State.NO_BORE);
    new Instruments(bench.job).size("bore", "3.8700", "Manual, page 6-3");
    assertThat(filing.find("B3", Ring.SECOND).orElseThrow().wanted()).isPresent();
  }

  @ParameterizedTest
  @CsvSource({"0", "-0.004", "0.4", "0.004 in", "much"})
  void aRuleThatCannotBeIsRefused(String rule) {
    assertThat(filing.wantPerBore(Ring.TOP, rule, "")).isInstanceOf(FigureOutcome.Refused.class);
    assertThat(filing.rows()).isEmpty();
  }

  @Test
  void bothRailsWantOneGapAndEachIsARow() {
    done(filing.wantGap(Ring.UPPER_RAIL, "0.015", "Ring maker's sheet 7"));
    assertThat(filing.rows()).hasSize(16);
    assertThat(filing.find("B3", Ring.LOWER_RAIL)).isPresent();
  }

  @Test
  void theCardIsInTheRecordAndInATable() {
    done(filing.wantGap(Ring.TOP, "0.0150", "Ring maker's sheet 7"));
    read(Feature.RINGS, "B3", "ring-gap", "feelers", "top", "0.010");
    assertThat(BuildRecord.of(bench.job).find(RecordTable.RING_FILING).rows())
        .hasSize(8)
        .anySatisfy(
            row -> {
              assertThat(row.cells())
                  .containsExactly(
                      "cylinder 3, top ring",
                      "0.0150 in",
                      "0.0100 in",
                      "file 0.0050 in",
                      "0.0150 in (Ring maker's sheet 7)");
              assertThat(row.open()).isTrue();
            });
    assertThat(JobTables.of(bench.job).stream().filter(table -> table.name().equals("rings")))
        .singleElement()
        .satisfies(table -> assertThat(table.rows()).hasSize(8));
  }
}
