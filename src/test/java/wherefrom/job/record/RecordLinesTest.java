package wherefrom.job.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.BenchJob;
import wherefrom.job.Benches;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.job.pages.RecordLine;
import wherefrom.job.puttogether.Fitting;
import wherefrom.quantity.Dimension;

/** Each part stands on one sheet, at the place where it is; at its home it is told where. */
class RecordLinesTest {
  private final BenchJob bench = BenchJob.v8().reuseAll();
  private final Fitting fitting = new Fitting(bench.job);

  private List<String> at(String place) {
    return new RecordLines(bench.job.state())
        .of(Benches.place(place)).stream().map(RecordLinesTest::words).toList();
  }

  private static String words(RecordLine line) {
    return line.name() + ": " + line.told();
  }

  @Test
  void aPartThatIsOutStandsAtItsHome() {
    assertThat(at("pushrod@3EX")).containsExactly("pushrod: reuse");
  }

  @Test
  void aPartThatIsFittedElsewhereStandsThereAndTheOneOfThatPlaceIsNotIn() {
    fitting.fitOnPurpose(bench.part("pushrod@3EX"), Benches.spot("5EX"), "matched pair");
    assertThat(at("pushrod@3EX")).containsExactly("pushrod, own: fitted at 5 EX");
    assertThat(at("pushrod@5EX"))
        .containsExactly("pushrod, from 3 EX: reuse", "pushrod, own, not in: reuse");
  }

  @Test
  void twoThatChangedPlacesEachTellWhereTheOtherIs() {
    fitting.fitOnPurpose(bench.part("pushrod@3EX"), Benches.spot("5EX"), "matched pair");
    fitting.fitOnPurpose(bench.part("pushrod@5EX"), Benches.spot("3EX"), "matched pair");
    assertThat(at("pushrod@3EX"))
        .containsExactly("pushrod, from 5 EX: reuse", "pushrod, own: fitted at 5 EX");
    assertThat(at("pushrod@5EX"))
        .containsExactly("pushrod, from 3 EX: reuse", "pushrod, own: fitted at 3 EX");
  }

  private void measure(Subject subject, String plan, String size) {
    ReadingPlan readings = ReadingPlans.find(plan).orElseThrow();
    Map<String, List<String>> taken = new LinkedHashMap<>();
    readings.stations().forEach(station -> taken.put(station.key(), List.of(size)));
    assertThat(
            new Measuring(bench.job)
                .take(new Measuring.Entry(subject, plan, "mic", taken, true, "")))
        .isInstanceOf(Measuring.Answer.Kept.class);
  }

  private List<RecordLine> pistonToBore(String skirt) {
    String step = "0.0001 in";
    new Instruments(bench.job).list("mic", Dimension.LENGTH, step, step, step);
    measure(new Subject.AFeature(Feature.BORE, "B3"), "bore", "3.8710");
    measure(Subject.ofPart(bench.item("piston@B3")), "piston-diameter", skirt);
    return new RecordLines(bench.job.state())
        .of(new Subject.AFeature(Feature.BORE, "B3")).stream()
            .filter(line -> line.name().startsWith("piston to bore"))
            .toList();
  }

  @Test
  void aClearanceWithoutALimitBearsNoMark() {
    RecordLine line = pistonToBore("3.8690").get(0);
    assertThat(words(line)).startsWith("piston to bore: 0.0020");
    assertThat(line.look()).isEqualTo(Look.NOT_LOOKED);
  }

  /** By the readings it is larger than its bore: the least is shown, and it is marked. */
  @Test
  void aPartThatWouldNotGoInIsMarkedWithItsLeastClearance() {
    RecordLine line = pistonToBore("3.8730").get(0);
    assertThat(words(line)).startsWith("piston to bore, would not go in: -0.0020");
    assertThat(line.look()).isEqualTo(Look.SUSPECT);
  }
}
