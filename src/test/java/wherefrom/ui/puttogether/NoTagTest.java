package wherefrom.ui.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.job.PlaceState;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.print.PrintTagsScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.ui.shop.RetagScreen;

/** The part in the hand has lost its tag while its place waits for it. */
class NoTagTest {
  private final SampleJob sample = SampleJob.apart();

  private SampleWindow waiting() {
    SampleWindow window = new SampleWindow(96, 100);
    window.shell.context().open(sample.job);
    window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
    window.scan(sample.card("3IN"));
    window.layOut();
    assertThat(window.words()).contains("Now scan the part");
    return window;
  }

  private static void press(SampleWindow window, String... words) {
    for (String each : words) {
      window.press(each);
      window.layOut();
    }
  }

  @Test
  void aPartWithoutATagIsToldByWhereItLayAndGetsANewTagForTheSamePlace() {
    Toolkit.on(
        () -> {
          SampleWindow window = waiting();
          press(window, "No tag on it", "It lay as the 3 IN lifter", "Print its tag again");
          assertThat(window.shell.current()).isInstanceOf(PrintTagsScreen.class);
          press(window, "Back");
          assertThat(window.words()).contains("Now scan the part");
          window.scan(sample.tag("lifter@3IN"));
          assertThat(sample.state("lifter@3IN")).isEqualTo(PlaceState.FITTED);
          return 0;
        });
  }

  @Test
  void orItGoesInAtOnce() {
    Toolkit.on(
        () -> {
          SampleWindow window = waiting();
          press(window, "No tag on it", "It lay as the 3 IN lifter", "Put it in without");
          assertThat(sample.state("lifter@3IN")).isEqualTo(PlaceState.FITTED);
          assertThat(window.words()).contains("RIGHT PLACE");
          return 0;
        });
  }

  @Test
  void orItsReadingsTell() {
    Toolkit.on(
        () -> {
          SampleWindow window = waiting();
          press(window, "No tag on it", "Measure it");
          assertThat(window.shell.current()).isInstanceOf(RetagScreen.class);
          return 0;
        });
  }

  /** Only the part has no tag then: with a part in the hand there is nothing to tell. */
  @Test
  void itIsNotAskedWhereThePartIsKnown() {
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 100);
          window.shell.context().open(sample.job);
          window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
          window.scan(sample.tag("lifter@3IN"));
          window.layOut();
          assertThat(window.words()).doesNotContain("No tag on it");
          return 0;
        });
  }
}
