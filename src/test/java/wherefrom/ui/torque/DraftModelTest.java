package wherefrom.ui.torque;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.torque.TorqueBook;
import wherefrom.job.torque.TorqueStep;
import wherefrom.ui.sample.SampleJob;

class DraftModelTest {
  private final SampleJob sample = SampleJob.apart();
  private final DraftModel draft = new DraftModel();

  private String refusal() {
    return ((TorqueStep.Refused) draft.begin(new TorqueBook(sample.job))).sentence();
  }

  @Test
  void nothingIsTakenForGranted() {
    assertThat(refusal()).contains("Name each bolt once");
    assertThat(draft.size(6, 2)).contains("1 to 5 rows");
    assertThat(draft.size(2, 5)).isEmpty();
    assertThat(refusal()).contains("Say which bolts");
    draft.fastener("head bolts");
    assertThat(refusal()).contains("how the threads are prepared");
    draft.threads("dry");
    assertThat(refusal()).contains("where the figures come from");
    draft.source("manual, p. 12");
    assertThat(refusal()).contains("Start with a torque stage");
    assertThat(draft.add("30 mm")).contains("is not a stage");
    assertThat(draft.add("30,5 N·m")).isEmpty();
    assertThat(draft.begin(new TorqueBook(sample.job))).isInstanceOf(TorqueStep.Done.class);
  }

  @Test
  void anotherGridBeginsTheOrderAnew() {
    draft.size(1, 3);
    draft.order(List.of(3, 2, 1), "this engine's service information");
    assertThat(draft.orderWords())
        .isEqualTo("your own, 3 bolts: this engine's service information");
    draft.size(1, 4);
    assertThat(draft.orderWords()).contains("common practice, no source");
    draft.add("30 N·m");
    draft.removeLastStage();
    assertThat(draft.stages()).isEmpty();
  }

  @Test
  void theSetsOfBoltsComeFromTheLayout() {
    assertThat(DraftModel.fasteners(sample.job.state().layout()).usual())
        .startsWith("head bolts, left", "head bolts, right")
        .endsWith("intake manifold");
  }

  @Test
  void aBoltKeepsTheNumberThatItWasTouchedWith() {
    SequenceModel sequence = new SequenceModel();
    sequence.touch(4);
    sequence.touch(2);
    sequence.touch(4);
    assertThat(sequence.order()).containsExactly(4, 2);
    assertThat(sequence.face(2)).isEqualTo(new BoltFace("2", BoltFace.Look.DONE));
    assertThat(sequence.face(1)).isEqualTo(new BoltFace("", BoltFace.Look.OPEN));
    sequence.takeBack();
    assertThat(sequence.order()).containsExactly(4);
  }
}
