package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.decide.Deciding;
import wherefrom.job.decide.Proposal;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.job.record.RecordTables;
import wherefrom.quantity.Dimension;
import wherefrom.rules.Verdict;
import wherefrom.workings.catalogue.accept.Acceptance;

/** Housing, walls and journal of one bearing brought together. */
class OilClearancesTest {
  private static final Subject JOURNAL = new Subject.AFeature(Feature.MAIN_JOURNAL, "M2");
  private static final Subject HOUSING = new Subject.AFeature(Feature.MAIN_HOUSING, "M2");

  private final BenchJob bench = BenchJob.v8();
  private final Instruments tools = new Instruments(bench.job);

  @BeforeEach
  void listTools() {
    tools.list("mic", Dimension.LENGTH, "0.0001", "0.0001", "0.0001");
  }

  private void take(Subject subject, String plan, String... pairs) {
    Map<String, List<String>> readings = new LinkedHashMap<>();
    for (int at = 0; at < pairs.length; at += 2) {
      readings.put(pairs[at], List.of(pairs[at + 1]));
    }
    assertThat(
            new Measuring(bench.job)
                .take(new Measuring.Entry(subject, plan, "mic", readings, false, "")))
        .isInstanceOf(Measuring.Answer.Kept.class);
  }

  private void housing(String size) {
    take(HOUSING, "main-housing", "vertical", size, "left", "2.8011", "right", "2.8012");
  }

  private void journal(String size) {
    take(
        JOURNAL,
        "main-journal",
        "front-vertical",
        size,
        "front-horizontal",
        size,
        "rear-vertical",
        size,
        "rear-horizontal",
        size);
  }

  private void wall(String half, String size) {
    Subject shell = Subject.ofPart(bench.item("main-shell@M2" + half));
    take(shell, "main-shell-wall", "front", size, "middle", size, "rear", size);
  }

  private BearingClearance main2() {
    return new OilClearances(bench.job.state()).find(JOURNAL).orElseThrow();
  }

  @Test
  void whatIsMissingIsNamed() {
    assertThat(main2().sentence())
        .isEqualTo("Still to measure: main housing, journal, a shell's wall.");
    housing("2.8010");
    wall("U", "0.0945");
    assertThat(main2().sentence()).isEqualTo("Still to measure: journal.");
  }

  @Test
  void everyBearingOfTheEngineIsListed() {
    assertThat(new OilClearances(bench.job.state()).list())
        .extracting(BearingClearance::words)
        .hasSize(13)
        .startsWith("main 1", "main 2")
        .endsWith("rod 7", "rod 8");
  }

  /**
   * 2.8010 - 0.1890 - 2.6100 = 0.0020 in: example worked by hand on NAVEDTRA 14050's plain
   * measuring; with one wall counted twice u = 0.000228 in where every reading has 0.0000933 in,
   * less for the thin wall, which hardly grows with its temperature.
   */
  @Test
  void oneWallCountsTwice() {
    housing("2.8010");
    wall("U", "0.0945");
    journal("2.6100");
    assertThat(main2().clearance().orElseThrow().value()).isCloseTo(0.0020, within(1e-9));
    double wall = Math.sqrt((0.00005 * 0.00005 + 2 * 0.0001 * 0.0001) / 3);
    double warm = 2 * 11.5e-6 / Math.sqrt(3);
    double u =
        Math.sqrt(
            wall * wall * 6
                + Math.pow(2.8010 * warm, 2)
                + Math.pow(2.6100 * warm, 2)
                + Math.pow(2 * 0.0945 * warm, 2));
    assertThat(main2().clearance().orElseThrow().standardUncertainty())
        .isCloseTo(u, within(1e-8))
        .isCloseTo(0.000218, within(0.000008));
  }

  @Test
  void bothWallsAreUsedWhereBothAreMeasured() {
    housing("2.8010");
    wall("U", "0.0945");
    wall("L", "0.0940");
    journal("2.6100");
    assertThat(main2().clearance().orElseThrow().value()).isCloseTo(0.0025, within(1e-9));
  }

  @Test
  void theLimitAnswersAndShellsOutOfItAreNotCleared() {
    housing("2.8010");
    wall("U", "0.0945");
    wall("L", "0.0945");
    journal("2.6100");
    tools.limit("main-journal", "clearance", "0.0010", "0.0030", "this engine's manual, p. 9");
    assertThat(main2().judgement().orElseThrow().decision()).isEqualTo(Acceptance.Ruling.ACCEPT);
    tools.limit("main-journal", "clearance", "0.0010", "0.0021", "this engine's manual, p. 9");
    assertThat(main2().judgement().orElseThrow().decision()).isEqualTo(Acceptance.Ruling.UNDECIDED);
    tools.limit("main-journal", "clearance", "0.0005", "0.0015", "this engine's manual, p. 9");
    assertThat(main2().look()).isEqualTo(Look.FAIL);
    assertThat(bench.job.state().bench().worst(bench.item("main-shell@M2L")).look())
        .isEqualTo(Look.FAIL);
    assertThat(bench.verdict("main-shell@M2U")).isInstanceOf(Verdict.NotCleared.class);
    Proposal proposal = new Deciding(bench.job).propose(bench.item("main-shell@M2L"));
    assertThat(proposal.decision()).contains(Decision.REPLACE);
    assertThat(proposal.reasons().get(0).source()).isEqualTo("this engine's manual, p. 9");
    assertThat(RecordTables.measurements(bench.job).rows())
        .anyMatch(row -> row.cells().get(0).equals("main 2, oil clearance") && row.open());
    assertThat(bench.job.state().bench().worst(bench.item("main-shell@M3L")).look())
        .isEqualTo(Look.NOT_LOOKED);
  }

  @Test
  void aJournalThatWouldNotGoInIsSaid() {
    housing("2.8010");
    wall("U", "0.0945");
    journal("2.6130");
    assertThat(main2().sentence()).contains("would not go into the bearing");
  }

  @Test
  void aJournalThatWouldNotGoInAtOnePositionIsSaidToo() {
    housing("2.8010");
    wall("U", "0.0945");
    journal("2.6100");
    take(
        JOURNAL,
        "main-journal",
        "front-vertical",
        "2.6100",
        "front-horizontal",
        "2.6100",
        "rear-vertical",
        "2.6100",
        "rear-horizontal",
        "2.6122");
    assertThat(main2().sentence()).contains("would not go into the bearing");
    assertThat(main2().clearance()).isEmpty();
  }

  @Test
  void whatIsFoundAfterTheDecisionStopsThePart() {
    int shell = bench.item("main-shell@M2U");
    new Deciding(bench.job).decide(shell, Decision.REUSE, "looks good");
    assertThat(bench.verdict("main-shell@M2U")).isInstanceOf(Verdict.RightPlace.class);
    housing("2.8010");
    wall("U", "0.0945");
    journal("2.6100");
    tools.limit("main-journal", "clearance", "0.0005", "0.0015", "this engine's manual, p. 9");
    assertThat(bench.verdict("main-shell@M2U").sentence()).contains("failed after the decision");
    new Deciding(bench.job).decide(shell, Decision.REUSE, "mock-up only");
    assertThat(bench.verdict("main-shell@M2U")).isInstanceOf(Verdict.RightPlace.class);
  }
}
