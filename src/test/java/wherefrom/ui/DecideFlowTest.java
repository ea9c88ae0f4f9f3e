package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Decision;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** A set decided in the window, and taken back. */
class DecideFlowTest {
  private final SampleJob sample = SampleJob.apart();

  private long decided() {
    return sample.job.state().parts().stream()
        .filter(part -> part.decision().equals(Optional.of(Decision.REPLACE)))
        .count();
  }

  @Test
  void oneUndoTakesAWholeSetBack() {
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          window.shell.context().open(sample.job);
          window.shell.context().navigator().show(ScreenId.DECIDE);
          window.layOut();
          window.press("Lifters");
          window.press("Replace all");
          window.press("replaced as a set");
          assertThat(window.words()).contains("16 lifters: replace.", "cylinder 1: replace");
          assertThat(decided()).isEqualTo(16);
          window.press("UNDO");
          assertThat(window.words()).contains("Undone: 16 lifters: replace.");
          assertThat(window.shell.current().aside()).isEqualTo("16 undecided");
          assertThat(decided()).isZero();
          return window;
        });
  }
}
