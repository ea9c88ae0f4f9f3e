package wherefrom.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import org.junit.jupiter.api.Test;
import wherefrom.ui.Toolkit;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** Messages at the foot of the window and the keys above them. */
class MessageTest {
  private static final long LATER_NANOS = 2_000_000_000L;

  private static SampleWindow open() {
    SampleWindow window = new SampleWindow(96, 100);
    window.shell.desk().open(SampleJob.apart().job);
    window.nanos.addAndGet(LATER_NANOS);
    window.layOut();
    return window;
  }

  private static Node target(SampleWindow window, String words) {
    return window.targets().stream()
        .filter(node -> window.words(node).startsWith(words))
        .findFirst()
        .orElseThrow();
  }

  private static Bounds where(SampleWindow window, String words) {
    Node target = target(window, words);
    return target.localToScene(target.getLayoutBounds());
  }

  private static void say(SampleWindow window, String sentence) {
    window.shell.desk().say(sentence);
    window.layOut();
  }

  @Test
  void noKeyMovesWhenAMessageIsPutAwayOrComesAgain() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          Bounds free = where(window, "Between the days");
          say(window, "Something to read.");
          Bounds under = where(window, "Between the days");
          assertThat(under).isNotEqualTo(free);
          window.press("Put away");
          assertThat(window.shell.message()).isEmpty();
          assertThat(where(window, "Between the days")).isEqualTo(under);
          say(window, "More.");
          assertThat(where(window, "Between the days")).isEqualTo(under);
          return 0;
        });
  }

  @Test
  void aPressRightAfterTheKeysMovedDoesNothing() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          Screen home = window.shell.current();
          say(window, "Something to read.");
          window.nanos.addAndGet(-100_000_000L);
          window.press("Between the days");
          assertThat(window.shell.current()).isSameAs(home);
          window.press("Between the days");
          assertThat(window.shell.current()).isNotSameAs(home);
          return 0;
        });
  }

  @Test
  void aMessageGoesWithItsScreenAndGivesItsRowBack() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          Bounds free = where(window, "Between the days");
          say(window, "Something to read.");
          window.nanos.addAndGet(LATER_NANOS);
          window.press("Between the days");
          assertThat(window.shell.message()).isEmpty();
          window.press("Back");
          assertThat(where(window, "Between the days")).isEqualTo(free);
          return 0;
        });
  }

  @Test
  void whatIsSaidOnTheWayToAScreenStays() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          window.shell.desk().say("Kept.");
          window.shell.desk().navigator().show(ScreenId.BETWEEN);
          assertThat(window.shell.message()).isEqualTo("Kept.");
          return 0;
        });
  }
}
