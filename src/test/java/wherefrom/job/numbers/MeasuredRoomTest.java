package wherefrom.job.numbers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wherefrom.engine.ValveSide;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.BenchJob;
import wherefrom.job.change.Planning;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;
import wherefrom.job.tables.JobTables;
import wherefrom.quantity.Dimension;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;

/** The least room from piston to valve as it was read, of all valves of a side. */
class MeasuredRoomTest {
  private static final ReadingPlan PLAN = ReadingPlans.find("piston-valve").orElseThrow();

  /** By hand: 0.100 + 0.0004·(x − 8)² in, and that less 0.020 in. */
  private static final String[] ROOMY = {
    "0.312", "0.230", "0.168", "0.126", "0.104", "0.102", "0.120"
  };

  private static final String[] TIGHT = {
    "0.292", "0.210", "0.148", "0.106", "0.084", "0.082", "0.100"
  };

  /** It goes on falling: the least lies beyond what was read. */
  private static final String[] FALLING = {
    "0.200", "0.180", "0.160", "0.140", "0.120", "0.100", "0.070"
  };

  private final BenchJob bench = BenchJob.v8();

  @BeforeEach
  void dial() {
    new Instruments(bench.job).list("DIAL", Dimension.LENGTH, "0.001", "0.001", "0.001");
  }

  private void read(String valve, String... inches) {
    Map<String, List<String>> taken = new LinkedHashMap<>();
    for (int at = 0; at < inches.length; at++) {
      taken.put(PLAN.stations().get(at).key(), List.of(inches[at]));
    }
    Subject tip = new Subject.AFeature(Feature.VALVE_TIP, valve);
    assertThat(
            new Measuring(bench.job)
                .take(new Measuring.Entry(tip, PLAN.key(), "DIAL", taken, true, "")))
        .isInstanceOf(Measuring.Answer.Kept.class);
  }

  private Optional<MeasuredRoom> find(ValveSide side) {
    return MeasuredRoom.find(bench.job.state(), side);
  }

  @Test
  void theTightestValveOfEachSideIsNamed() {
    assertThat(find(ValveSide.INTAKE)).isEmpty();
    read("3IN", ROOMY);
    read("5IN", TIGHT);
    read("3EX", ROOMY);
    MeasuredRoom intake = find(ValveSide.INTAKE).orElseThrow();
    assertThat(intake.valve()).isEqualTo("5IN");
    assertThat(intake.value().value()).isCloseTo(0.080, within(0.0005));
    assertThat(intake.figure()).startsWith("0.080");
    assertThat(find(ValveSide.EXHAUST).orElseThrow().valve()).isEqualTo("3EX");
  }

  @Test
  void whereTheLeastIsNotFoundItIsAtMostTheSmallestReading() {
    read("3IN", FALLING);
    assertThat(find(ValveSide.INTAKE).orElseThrow().figure()).startsWith("≤ 0.070");
  }

  @Test
  void whatWasReadBeforeTheHeadWasMilledSaysNothingOfNow() {
    read("3IN", ROOMY);
    new Planning(bench.job).make(Change.at(ChangeKind.HEAD_MILLED, "left"));
    new Planning(bench.job).make(Change.at(ChangeKind.HEAD_MILLED, "right"));
    assertThat(find(ValveSide.INTAKE)).isEmpty();
  }

  /** The table has the judgement under a key of its own, so that none takes it for the least. */
  @Test
  void inTheTableALeastThatIsNotFoundIsUndecided() {
    new Instruments(bench.job).limit(PLAN.key(), "least", "0.060 in", "", "Manual, p. 12");
    read("3IN", FALLING);
    TidyTable table =
        JobTables.of(bench.job).stream()
            .filter(one -> one.name().equals("readings"))
            .findFirst()
            .orElseThrow();
    int result = table.columns().indexOf("result");
    int verdict = table.columns().indexOf("verdict");
    assertThat(table.rows().stream().map(row -> words(row, result) + " " + words(row, verdict)))
        .containsExactly("smallest ", "least-at-most undecided");
  }

  private static String words(List<TidyCell> row, int at) {
    return row.get(at).text();
  }
}
