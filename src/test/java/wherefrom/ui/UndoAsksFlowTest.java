package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.job.entry.PartOut;
import wherefrom.parts.Action;
import wherefrom.parts.Whereabouts;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** UNDO takes back at once what was done on the screen that is up; it asks about all else. */
class UndoAsksFlowTest {
  private final SampleJob sample = SampleJob.whole();

  private SampleWindow open(ScreenId screen) {
    SampleWindow window = new SampleWindow(96, 100);
    window.shell.context().open(sample.job);
    window.shell.context().navigator().show(screen);
    window.layOut();
    return window;
  }

  private Whereabouts where(String place) {
    return sample.record(place).where();
  }

  @Test
  void aStepOfBeforeIsAskedAboutAndTakenBackByTheSecondPress() {
    sample.job.record(new PartOut(sample.part("rocker@1IN").item()));
    Toolkit.on(
        () -> {
          SampleWindow window = open(ScreenId.BETWEEN);
          window.press("UNDO");
          assertThat(where("rocker@1IN")).isEqualTo(Whereabouts.OUT);
          assertThat(window.shell.message())
              .isEqualTo("Press UNDO again to take back: 1 IN rocker came out.");
          window.press("UNDO");
          assertThat(where("rocker@1IN")).isEqualTo(Whereabouts.IN_ENGINE);
          return window;
        });
  }

  /** What was done on another screen is not on this one, though it was done just now. */
  @Test
  void eachScreenHasItsOwnSteps() {
    Toolkit.on(
        () -> {
          SampleWindow window = open(ScreenId.TAKE_APART);
          window.scan(sample.tag("rocker@1IN"));
          window.layOut();
          window.press("Back");
          window.press("UNDO");
          assertThat(where("rocker@1IN")).isEqualTo(Whereabouts.OUT);
          window.scan(Action.UNDO.code().digits());
          assertThat(where("rocker@1IN")).isEqualTo(Whereabouts.IN_ENGINE);
          return window;
        });
  }

  @Test
  void whatWasDoneHereGoesAtOnceAndWhatLiesBelowIsAskedAbout() {
    sample.job.record(new PartOut(sample.part("rocker@1IN").item()));
    Toolkit.on(
        () -> {
          SampleWindow window = open(ScreenId.TAKE_APART);
          window.scan(sample.tag("rocker@1EX"));
          window.layOut();
          window.press("Note");
          window.press("Back");
          window.press("UNDO");
          assertThat(where("rocker@1EX")).isEqualTo(Whereabouts.IN_ENGINE);
          window.nanos.addAndGet(1_000_000_000L);
          window.press("UNDO");
          assertThat(where("rocker@1IN")).isEqualTo(Whereabouts.OUT);
          assertThat(window.shell.message()).startsWith("Press UNDO again");
          return window;
        });
  }
}
