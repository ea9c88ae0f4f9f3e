package wherefrom.job.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.inspection.compare.OddOneOut;
import wherefrom.job.BenchJob;
import wherefrom.job.MeasuredResult;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;

class UndecidedTest {
  private final BenchJob bench = BenchJob.v8();
  private final Instruments tools = new Instruments(bench.job);

  private void read(Subject subject, String plan, String... sizes) {
    Map<String, List<String>> readings = new LinkedHashMap<>();
    for (int at = 0; at < sizes.length; at += 2) {
      readings.put(sizes[at], List.of(sizes[at + 1]));
    }
    assertThat(
            new Measuring(bench.job)
                .take(new Measuring.Entry(subject, plan, "mic", readings, true, "")))
        .isInstanceOf(Measuring.Answer.Kept.class);
  }

  /** A journal that is out of round may be tapered too: that is still to be told. */
  @Test
  void aValueTooNearItsLimitIsOpenThoughAnotherIsRejected() {
    tools.list("mic", Dimension.LENGTH, "0.0001", "0.0001", "0.0001");
    tools.limit("main-journal", "out-of-round", "", "0.0005", "own example");
    tools.limit("main-journal", "taper", "", "0.0010", "own example");
    read(
        new Subject.AFeature(Feature.MAIN_JOURNAL, "M2"),
        "main-journal",
        "front-vertical",
        "2.6100",
        "front-horizontal",
        "2.6070",
        "rear-vertical",
        "2.6090",
        "rear-horizontal",
        "2.6060");
    Undecided open = Undecided.of(bench.job.state());
    assertThat(open.results()).extracting(MeasuredResult::worst).containsExactly(Look.FAIL);
    assertThat(open.count()).isEqualTo(1);
  }

  /** 25.4 mm to the inch, whatever the first of them was typed in. */
  @Test
  void aSetIsComparedInTheUnitOfTheJob() {
    tools.list("mic", Dimension.LENGTH, "0.0001", "0.0001", "0.0001");
    read(Subject.ofPart(bench.item("pushrod@1IN")), "pushrod-length", "length", "203.2 mm");
    read(Subject.ofPart(bench.item("pushrod@1EX")), "pushrod-length", "length", "8.0010 in");
    Comparing comparing = new Comparing(bench.job);
    assertThat(comparing.unit("pushrod-length")).isEqualTo(Unit.INCH);
    assertThat(comparing.compare("pushrod-length").orElseThrow().members())
        .extracting(OddOneOut.Member::value)
        .containsExactly(8.0, 8.001);
  }
}
