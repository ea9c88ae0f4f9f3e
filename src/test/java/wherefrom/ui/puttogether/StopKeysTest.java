package wherefrom.ui.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.settings.Appearance;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.Glass;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** The keys of a stop are on the glass, whatever else has room there. */
class StopKeysTest {
  private static SampleWindow notCleared(String glass, int percent, SampleJob sample) {
    Glass on = Glass.all().stream().filter(it -> it.name().equals(glass)).findFirst().orElseThrow();
    SampleWindow window = new SampleWindow(on, percent, Appearance.LIGHT);
    window.shell.context().open(sample.job);
    Subject pushrod = Subject.ofPart(sample.part("pushrod@3EX").item());
    new Inspecting(sample.job).answer(pushrod, "pushrod-roll", Look.SUSPECT, "");
    window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
    window.layOut();
    window.scan(sample.tag("pushrod@3EX"));
    window.scan(sample.card("3EX"));
    window.layOut();
    return window;
  }

  /** Two keys of large letters need the width of the picture, which leaves. */
  @ParameterizedTest
  @CsvSource({"small, 150", "tablet, 150", "fine, 150", "small, 200", "laptop, 150"})
  void noPictureTakesTheRoomOfTheKeyThatIsToBeHeld(String glass, int percent) {
    Toolkit.on(
        () -> {
          SampleWindow window = notCleared(glass, percent, SampleJob.apart());
          window.press(window.shell.context().touch().isLarge() ? "On purpose" : "Fit it here");
          window.press("until a new one comes");
          window.layOut();
          assertThat(window.targets())
              .anySatisfy(key -> assertThat(key.getAccessibleText()).startsWith("Hold: until"));
          return 0;
        });
  }

  /** Large glass has room for large letters and the picture. */
  @Test
  void onLargeGlassTheLargestLettersTakeNoPicture() {
    Toolkit.on(
        () -> {
          SampleWindow window = notCleared("laptop", 200, SampleJob.apart());
          assertThat(window.shell.lookupAll(".drawn")).isNotEmpty().allMatch(Node::isVisible);
          return 0;
        });
  }
}
