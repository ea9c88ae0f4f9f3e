package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ClearancePair;
import wherefrom.inspection.measure.ClearancePairs;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.job.numbers.JobCharts;
import wherefrom.job.pages.RecordTable;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.tables.JobTables;
import wherefrom.quantity.Dimension;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.workings.catalogue.accept.Acceptance.Ruling;

/**
 * Clearances out of pairs of readings, against manuals that print both sizes and the clearance
 * between them, and against drawn readings.
 */
class PairClearancesTest {
  /** Resolution, error and repeat of 0.0001 in each: TRADE figures of two micrometers. */
  private static final String STEP = "0.0001 in";

  private static void list(BenchJob bench) {
    new Instruments(bench.job).list("mic", Dimension.LENGTH, STEP, STEP, STEP);
    new Instruments(bench.job).list("bore gauge", Dimension.LENGTH, STEP, STEP, STEP);
  }

  private static void take(BenchJob bench, Subject subject, String plan, String... sizes) {
    ReadingPlan readings = ReadingPlans.find(plan).orElseThrow();
    Map<String, List<String>> taken = new LinkedHashMap<>();
    for (int at = 0; at < readings.stations().size(); at++) {
      taken.put(readings.stations().get(at).key(), List.of(sizes[at % sizes.length]));
    }
    assertThat(
            new Measuring(bench.job)
                .take(new Measuring.Entry(subject, plan, "mic", taken, true, "")))
        .isInstanceOf(Measuring.Answer.Kept.class);
  }

  private static Subject subject(BenchJob bench, ClearancePair.Side side, String where) {
    return PairReadings.subject(bench.job.state(), side, where).orElseThrow();
  }

  private static PairClearance find(BenchJob bench, String key, String where) {
    return new PairClearances(bench.job.state())
        .list(ClearancePairs.find(key).orElseThrow()).stream()
            .filter(one -> one.where().equals(where))
            .findFirst()
            .orElseThrow();
  }

  /** Each manual prints the smallest and largest size of both parts, and the clearance. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "rocker-to-shaft|3IN|10.500 mm|10.518 mm|10.473 mm|10.484 mm|0.016|0.045"
            + "|TM 9-6115-670-14&P, 5-129",
        "rocker-to-shaft|3IN|0.752 in|0.752 in|0.744 in|0.744 in|0.008|0.008"
            + "|TM 9-2815-254-24, 3-105: both at their limits",
        "lifter-to-bore|3IN|0.4987 in|0.4992 in|0.4974 in|0.4979 in|0.0008|0.0018"
            + "|TM 5-4310-276-14, table 1-1; it prints 0.0006 for the least",
        "stem-to-guide|3IN|0.3145 in|0.3145 in|0.3115 in|0.3115 in|0.003|0.003|own example",
        "cam-to-bearing|C2|50.025 mm|50.051 mm|50.000 mm|50.000 mm|0.025|0.051"
            + "|TM 10-3930-653-14&P, 4-40 (journal invented)",
        "piston-to-bore|B3|3.8710 in|3.8718 in|3.8700 in|3.8700 in|0.0010|0.0018"
            + "|TM 10-3930-653-14&P (piston invented)",
        "pin-to-piston|B3|0.9271 in|0.9273 in|0.9268 in|0.9270 in|0.0001|0.0005|own example",
        "pin-to-rod|B3|0.9260 in|0.9262 in|0.9268 in|0.9270 in|-0.0010|-0.0006|own example: tight",
      })
  void theClearanceIsTheOnePrinted(
      String key,
      String where,
      String low,
      String high,
      String thin,
      String thick,
      double least,
      double most,
      String source) {
    BenchJob bench = BenchJob.shaftV8();
    list(bench);
    ClearancePair pair = ClearancePairs.find(key).orElseThrow();
    take(bench, subject(bench, pair.around(), where), pair.around().plan(), low, high);
    take(bench, subject(bench, pair.inside(), where), pair.inside().plan(), thick, thin);
    ClearanceRange range = find(bench, key, where).range().orElseThrow();
    assertThat(range.smallest().value()).as(source).isCloseTo(least, within(1e-9));
    assertThat(range.largest().value()).as(source).isCloseTo(most, within(1e-9));
  }

  /** Just under its keeper groove a stem is as thick as new; it wears where the guide is. */
  @Test
  void onlyWhatRunsInEachOtherIsCompared() {
    BenchJob bench = BenchJob.shaftV8();
    list(bench);
    ClearancePair stem = ClearancePairs.find("stem-to-guide").orElseThrow();
    take(bench, subject(bench, stem.around(), "3IN"), "guide-bore", "0.3145 in");
    take(
        bench,
        subject(bench, stem.inside(), "3IN"),
        "stem-diameter",
        "0.3130 in",
        "0.3115 in",
        "0.3115 in");
    assertThat(find(bench, "stem-to-guide", "3IN").range().orElseThrow().smallest().value())
        .isCloseTo(0.003, within(1e-9));
    assertThat(ClearancePairs.find("piston-to-bore").orElseThrow().facings())
        .extracting(ClearancePair.Facing::key)
        .containsExactly("middle", "bottom");
  }

  /** JCGM 100:2008, 5.1.2, beside drawn readings: each input equally likely within its limits. */
  @Test
  void theUncertaintyIsThatOfDrawnReadings() {
    BenchJob bench = v8WithPiston("3.8690");
    double stated =
        find(bench, "piston-to-bore", "B3").range().orElseThrow().smallest().standardUncertainty();
    double[] limits = {0.00005, 0.0001, 0.0001, 2 * 11.5e-6 * 3.87};
    Random random = new Random(20260301);
    double squares = 0;
    int runs = 200_000;
    for (int run = 0; run < runs; run++) {
      double off = 0;
      for (double limit : limits) {
        off += limit * (2 * random.nextDouble() - 1) - limit * (2 * random.nextDouble() - 1);
      }
      squares += off * off;
    }
    assertThat(stated).isCloseTo(Math.sqrt(squares / runs), within(0.01 * stated));
  }

  private static BenchJob v8WithPiston(String skirt) {
    BenchJob bench = BenchJob.v8();
    list(bench);
    Subject bore = new Subject.AFeature(Feature.BORE, "B3");
    take(bench, bore, "bore", "3.8710");
    take(bench, Subject.ofPart(bench.item("piston@B3")), "piston-diameter", skirt);
    return bench;
  }

  private static void limit(BenchJob bench, String key, String low, String high) {
    assertThat(new Instruments(bench.job).limit(key, "clearance", low, high, "Manual, page 6-12"))
        .isInstanceOf(Instruments.Answer.Kept.class);
  }

  @ParameterizedTest
  @CsvSource({
    "3.8690, ACCEPT, PASS",
    "3.8680, REJECT, FAIL",
    "3.8685, UNDECIDED, SUSPECT",
  })
  void aPistonIsAcceptedRejectedOrLeftOpenByItsBore(String skirt, Ruling ruling, Look look) {
    BenchJob bench = v8WithPiston(skirt);
    assertThat(find(bench, "piston-to-bore", "B3").look()).isEqualTo(Look.NOT_LOOKED);
    limit(bench, "piston-to-bore", "0.0010", "0.0025");
    PairClearance found = find(bench, "piston-to-bore", "B3");
    assertThat(found.judgement().orElseThrow().decision()).isEqualTo(ruling);
    assertThat(bench.job.state().bench().worst(bench.item("piston@B3")).look()).isEqualTo(look);
  }

  /** What is known by the readings is in the record, in the table and on a plot. */
  @Test
  void theClearanceIsShownWhereverReadingsAre() {
    BenchJob bench = v8WithPiston("3.8685");
    limit(bench, "piston-to-bore", "0.0010", "0.0025");
    assertThat(BuildRecord.of(bench.job).find(RecordTable.MEASURED).rows())
        .anySatisfy(
            row -> {
              assertThat(row.cells().get(0)).isEqualTo("cylinder 3, piston to bore clearance");
              assertThat(row.cells().get(1)).startsWith("0.0025");
              assertThat(row.cells().get(2)).contains("undecided");
              assertThat(row.cells().get(3)).isEqualTo("Manual, page 6-12");
              assertThat(row.open()).isTrue();
            });
    assertThat(JobTables.of(bench.job).get(1).rows())
        .filteredOn(row -> row.toString().contains("piston-to-bore"))
        .hasSize(4);
    assertThat(JobCharts.ofMeasured(bench.job))
        .anySatisfy(plot -> assertThat(plot.title()).isEqualTo("Piston to bore clearance"));
  }

  @Test
  void aBoreThatWasHonedIsReadAnew() {
    BenchJob bench = v8WithPiston("3.8690");
    bench.record(new ChangeMade(0, Change.at(ChangeKind.HONED, "B3")));
    assertThat(find(bench, "piston-to-bore", "B3").missing()).containsExactly("cylinder bore");
    take(bench, new Subject.AFeature(Feature.BORE, "B3"), "bore", "3.8715");
    assertThat(find(bench, "piston-to-bore", "B3").missing()).isEmpty();
  }

  @Test
  void aNewPistonHasNoClearanceUntilItIsMeasured() {
    BenchJob bench = v8WithPiston("3.8690");
    bench.replace("piston@B3");
    assertThat(find(bench, "piston-to-bore", "B3").missing())
        .containsExactly("piston at the skirt");
  }

  @Test
  void aPistonLargerThanItsBoreIsReadAgain() {
    BenchJob bench = v8WithPiston("3.8720");
    limit(bench, "piston-to-bore", "0.0010", "0.0025");
    PairClearance found = find(bench, "piston-to-bore", "B3");
    assertThat(found.judgement()).isEmpty();
    assertThat(found.sentence())
        .isEqualTo(
            "By these readings the piston would not go into the cylinder bore. Read both again.");
  }

  @Test
  void withoutAShaftNothingIsAskedOfRockers() {
    BenchJob bench = BenchJob.v8();
    assertThat(new PairClearances(bench.job.state()).pairs())
        .extracting(ClearancePair::key)
        .doesNotContain("rocker-to-shaft");
    assertThat(new Measuring(bench.job).listPlans(Subject.ofPart(bench.item("rocker@3EX"))))
        .extracting(ReadingPlan::key)
        .doesNotContain("rocker-bore");
  }

  /** What a kind that is not tracked would need is said, and nothing is invented. */
  @Test
  void aKindThatIsNotTrackedIsNamed() {
    BenchJob bench = BenchJob.fewKinds();
    assertThat(find(bench, "piston-to-bore", "B1").missing())
        .containsExactly("cylinder bore", "piston at the skirt (not tracked)");
  }

  @Test
  void everyStationOfAPairIsOneOfItsPlans() {
    for (ClearancePair pair : ClearancePairs.all()) {
      for (ClearancePair.Facing facing : pair.facings()) {
        assertThat(stations(pair.around())).containsAll(facing.around());
        assertThat(stations(pair.inside())).containsAll(facing.inside());
      }
    }
  }

  private static List<String> stations(ClearancePair.Side side) {
    ReadingPlan plan = ReadingPlans.find(side.plan()).orElseThrow();
    assertThat(plan.of()).isEqualTo(side.of());
    return plan.stations().stream().map(one -> one.key()).toList();
  }
}
