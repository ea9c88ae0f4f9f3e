package wherefrom.ui.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.job.settings.Appearance;
import wherefrom.parts.Action;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.sample.Glass;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** What is said while a stop stands: below its tag, and over none of its lines. */
class StopMessageTest {
  private static final String FULL = "The disk is full. Make room, then do it again.";

  private static SampleWindow stopped(String glass, int percent, SampleJob sample) {
    Glass on = Glass.all().stream().filter(it -> it.name().equals(glass)).findFirst().orElseThrow();
    SampleWindow window = new SampleWindow(on, percent, Appearance.LIGHT);
    window.shell.context().open(sample.job);
    window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
    window.layOut();
    window.scan(sample.tag("rod-shell@R8L"));
    window.scan(sample.card("R7L"));
    window.layOut();
    return window;
  }

  private static TagKey tag(SampleWindow window) {
    List<TagKey> all =
        window.targets().stream().filter(TagKey.class::isInstance).map(TagKey.class::cast).toList();
    assertThat(all).hasSize(1);
    return all.get(0);
  }

  /** What is seen: what is left out has no room. */
  private static String words(SampleWindow window) {
    StringBuilder all = new StringBuilder();
    collect(window, window.shell, all);
    return all.toString();
  }

  private static void collect(SampleWindow window, Node node, StringBuilder all) {
    if (!node.isVisible()) {
      return;
    }
    if (node instanceof FitText text) {
      all.append(window.words(text)).append('\n');
    } else if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> collect(window, child, all));
    }
  }

  @ParameterizedTest
  @CsvSource({"small, 200", "tablet, 150", "fine, 150", "upright, 200", "laptop, 100"})
  void whatIsNotKeptIsSaidBesideTheLinesAndTheTagDoesItAgain(String glass, int percent) {
    Toolkit.on(
        () -> {
          SampleJob sample = SampleJob.apart();
          SampleWindow window = stopped(glass, percent, sample);
          sample.logbook.fail(FULL);
          window.scan(sample.action(Action.UNDO));
          window.layOut();
          assertThat(words(window)).contains("From: rod 8, lower", "Right part:", FULL);
          assertThat(window.words(tag(window))).startsWith("Do it again");
          sample.logbook.fail("");
          window.moment();
          window.press(tag(window));
          window.layOut();
          assertThat(words(window)).doesNotContain("From: rod 8, lower", FULL);
          assertThat(sample.job.state().standingStop()).isEmpty();
          return 0;
        });
  }

  @ParameterizedTest
  @CsvSource({"small, 200", "tablet, 150", "upright, 200", "laptop, 100"})
  void whatElseIsSaidLeavesTheTagAsItIs(String glass, int percent) {
    Toolkit.on(
        () -> {
          SampleWindow window = stopped(glass, percent, SampleJob.apart());
          window.shell.context().say("The job was copied to the USB drive.");
          window.layOut();
          assertThat(words(window)).contains("From: rod 8, lower", "The job was copied");
          assertThat(window.words(tag(window))).startsWith("Scan the right part");
          return 0;
        });
  }

  /** A card that presses a key to be held is asked for twice: the key stays in view between. */
  @ParameterizedTest
  @CsvSource({"small, 200", "tablet, 150", "upright, 200", "laptop, 100"})
  void whatIsSaidOfAKeyLeavesThatKeyInView(String glass, int percent) {
    Toolkit.on(
        () -> {
          SampleJob sample = SampleJob.apart();
          SampleWindow window = stopped(glass, percent, sample);
          window.press(window.shell.context().touch().isLarge() ? "On purpose" : "Fit it here");
          window.press("measured better here");
          for (Action card : List.of(Action.NEXT, Action.NEXT, Action.YES)) {
            window.layOut();
            window.scan(sample.action(card));
          }
          window.layOut();
          assertThat(words(window)).contains("Hold: measured better here", "once more");
          return 0;
        });
  }
}
