package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.job.handling.Handling;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** Changes worked through the window, from the question to the verdict at reassembly. */
class ChangesFlowTest {
  private static void open(SampleWindow window, SampleJob sample, ScreenId id) {
    window.shell.context().open(sample.job);
    show(window, id);
  }

  private static void show(SampleWindow window, ScreenId id) {
    window.shell.context().navigator().show(id);
    window.layOut();
  }

  private static void scan(SampleWindow window, String digits) {
    window.scan(digits);
    window.layOut();
  }

  private static void fit(SampleWindow window, SampleJob sample, String part, String spot) {
    show(window, ScreenId.PUT_TOGETHER);
    scan(window, sample.tag(part));
    scan(window, sample.card(spot));
  }

  @Test
  void aUsedFlatLifterOnAnotherCamIsMustBeNewAndANewOneFits() {
    Toolkit.on(
        () -> {
          SampleJob sample = SampleJob.apart();
          SampleWindow window = new SampleWindow(96, 100);
          open(window, sample, ScreenId.CHANGES);
          window.press("Plan work");
          window.press("New flat-tappet cam");
          assertThat(window.words()).contains("not recorded yet", "16 lifters");
          window.press("Must be new: 16 lifters");
          assertThat(window.words()).contains("Brianesser.com, \"Why must I");
          window.press("Back");
          window.press("Plan it");
          fit(window, sample, "lifter@5EX", "5EX");
          assertThat(window.words()).contains("RIGHT PLACE");
          window.shell.context().navigator().home();
          show(window, ScreenId.CHANGES);
          window.press("Plan 1");
          window.press("Mark as done");
          fit(window, sample, "lifter@3EX", "3EX");
          assertThat(window.words())
              .contains("STOP", "Must be new: 3 EX", "worn in to its own lobe");
          window.press("UNDO");
          new Handling(sample.job).replace(sample.part("lifter@3EX").item(), "must be new");
          fit(window, sample, "lifter@3EX", "3EX");
          assertThat(window.words()).contains("RIGHT PLACE");
          return window;
        });
  }

  @Test
  void aPassedCheckClearsThePartThatWaitedForIt() {
    Toolkit.on(
        () -> {
          SampleJob sample = SampleJob.apart();
          SampleWindow window = new SampleWindow(96, 100);
          open(window, sample, ScreenId.CHANGES);
          window.press("Plan work");
          window.pressOnSomePage("Head gasket of another thickness");
          window.press("Not known yet");
          window.press("Mark as done");
          fit(window, sample, "pushrod@3EX", "3EX");
          assertThat(window.words()).contains("STOP", "rule 11");
          window.press("UNDO");
          window.shell.context().navigator().home();
          show(window, ScreenId.CHANGES);
          window.press("Open checks");
          window.press("Check before fitting: pushrods");
          window.press("Pass");
          fit(window, sample, "pushrod@3EX", "3EX");
          assertThat(window.words()).contains("RIGHT PLACE");
          return window;
        });
  }

  @Test
  void aDroppedPlanLeavesNothingBehind() {
    Toolkit.on(
        () -> {
          SampleJob sample = SampleJob.apart();
          SampleWindow window = new SampleWindow(96, 100);
          open(window, sample, ScreenId.CHANGES);
          window.press("Plan work");
          window.pressOnSomePage("Rod journals ground");
          window.press("0.010 in under");
          window.press("Plan it");
          window.press("Plan 1: rod journals ground, 0.010 in under");
          window.press("Drop the plan");
          assertThat(window.words()).contains("Plan 1 is dropped", "Open checks: 2");
          fit(window, sample, "rod-shell@R3U", "R3U");
          assertThat(window.words()).contains("RIGHT PLACE");
          return window;
        });
  }
}
