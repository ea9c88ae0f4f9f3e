package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.quantity.Dimension;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;

/** What was read of a valve's tip is of before once something moved the valve. */
class StaleReadingsTest {
  private static final Subject TIP = new Subject.AFeature(Feature.VALVE_TIP, "3EX");

  private final BenchJob bench = BenchJob.v8();

  StaleReadingsTest() {
    new Instruments(bench.job).list("feeler", Dimension.LENGTH, "0.001", "0.001", "0.001");
    Map<String, List<String>> read = Map.of("lash", List.of("0.020"));
    assertThat(
            new Measuring(bench.job)
                .take(new Measuring.Entry(TIP, "lash-cold", "feeler", read, false, "")))
        .isInstanceOf(Measuring.Answer.Kept.class);
  }

  private boolean isStale() {
    MeasuredResult lash = bench.job.state().measures().findResult(TIP, "lash-cold").orElseThrow();
    return new StaleReadings(bench.job.state()).isStale(lash);
  }

  private void make(ChangeKind kind, String where) {
    bench.record(new ChangeMade(0, Change.at(kind, where)));
  }

  @Test
  void lashIsOfBeforeWhereItsOwnHeadWasMilled() {
    assertThat(isStale()).isFalse();
    make(ChangeKind.HEAD_MILLED, "right");
    assertThat(isStale()).isFalse();
    make(ChangeKind.HEAD_MILLED, "left");
    assertThat(isStale()).isTrue();
  }

  @Test
  void lashIsOfBeforeWhereAnotherCamIsIn() {
    make(ChangeKind.NEW_FLAT_CAM, "");
    assertThat(isStale()).isTrue();
  }
}
