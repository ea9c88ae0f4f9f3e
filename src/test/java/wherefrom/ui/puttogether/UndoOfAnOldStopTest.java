package wherefrom.ui.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.job.puttogether.Fitting;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** UNDO takes back at once what was done here; a stop that waited before is asked about. */
class UndoOfAnOldStopTest {
  private final SampleJob sample = SampleJob.apart();

  private SampleWindow open() {
    SampleWindow window = new SampleWindow(96, 100);
    window.shell.context().open(sample.job);
    window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
    window.layOut();
    return window;
  }

  private int waiting() {
    return sample.job.state().stops().waiting().size();
  }

  @Test
  void aStopOfBeforeIsAskedAbout() {
    new Fitting(sample.job).fit(sample.part("rod-shell@R8L"), sample.spot("R7L"), false);
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          assertThat(window.words()).contains("STOP");
          window.press("UNDO");
          assertThat(waiting()).isEqualTo(1);
          assertThat(window.words()).contains("STOP", "Press UNDO again");
          window.press("UNDO");
          assertThat(waiting()).isZero();
          return 0;
        });
  }

  @Test
  void aStopThatWasGivenHereIsTakenBackAtOnce() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          window.scan(sample.tag("rod-shell@R8L"));
          window.scan(sample.card("R7L"));
          window.layOut();
          assertThat(waiting()).isEqualTo(1);
          window.press("UNDO");
          assertThat(waiting()).isZero();
          assertThat(window.words()).contains("Taken back");
          return 0;
        });
  }

  /** While the list is followed its next place stays up: what was taken back says so there. */
  @Test
  void whatWasTakenBackSaysSoWhereSomethingElseStands() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          window.press("Follow list");
          window.scan(sample.tag("main-shell@M1U"));
          window.layOut();
          window.press("UNDO");
          assertThat(window.words())
              .contains("Taken back: Main 1, upper shell fitted", "Recorded as empty: main 1")
              .doesNotContain("0001 main");
          return 0;
        });
  }
}
