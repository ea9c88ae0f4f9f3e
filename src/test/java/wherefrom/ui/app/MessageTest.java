package wherefrom.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wherefrom.ui.Toolkit;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** Messages, which have a place of their own, and the keys. */
class MessageTest {
  private static final long LATER_NANOS = 2_000_000_000L;
  private static final String LONG =
      "The folder for copies is not there. Put the USB drive in, or choose another folder in"
          + " Settings. Until then the job lies on this machine alone, and nothing that happens to"
          + " this machine's disk can be made good from elsewhere.";

  private static SampleWindow open() {
    SampleWindow window = new SampleWindow(96, 100);
    window.shell.context().open(SampleJob.apart().job);
    window.nanos.addAndGet(LATER_NANOS);
    window.layOut();
    return window;
  }

  private static void say(SampleWindow window, String sentence) {
    window.shell.context().say(sentence);
    window.layOut();
  }

  /** Every target, where it stands. */
  private static Map<String, Bounds> keys(SampleWindow window) {
    Map<String, Bounds> keys = new LinkedHashMap<>();
    for (Node target : window.targets()) {
      keys.put(window.words(target), target.localToScene(target.getLayoutBounds()));
    }
    return keys;
  }

  @ParameterizedTest
  @EnumSource(
      names = {"JOB_HOME", "TAKE_APART", "BENCH_MAP", "PUT_TOGETHER", "INSPECT", "DECIDE", "MONEY"})
  void noKeyMovesForAMessage(ScreenId screen) {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          window.shell.context().navigator().show(screen);
          window.nanos.addAndGet(LATER_NANOS);
          window.layOut();
          Map<String, Bounds> free = keys(window);
          for (String sentence : List.of("Something to read.", LONG)) {
            say(window, sentence);
            Map<String, Bounds> under = keys(window);
            assertThat(under).isNotEmpty();
            under.forEach((words, where) -> assertThat(where).isEqualTo(free.get(words)));
          }
          window.pressRail("Help");
          assertThat(window.words()).contains(LONG);
          window.press("Back");
          assertThat(keys(window)).isEqualTo(free);
          return 0;
        });
  }

  @Test
  void aMessageGoesWithTheNextDeedAndNotSoSoonThatNobodyReadIt() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          say(window, "Something to read.");
          window.press("Turn over");
          assertThat(window.shell.message()).isEqualTo("Something to read.");
          window.nanos.addAndGet(LATER_NANOS);
          window.press("Turn over");
          assertThat(window.shell.message()).isEmpty();
          return 0;
        });
  }

  @Test
  void aMessageGoesWithItsScreen() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          say(window, "Something to read.");
          window.nanos.addAndGet(LATER_NANOS);
          window.pressRail("Bench");
          assertThat(window.shell.message()).isEmpty();
          return 0;
        });
  }

  @Test
  void whatIsSaidOnTheWayToAScreenStays() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          window.shell.context().say("Kept.");
          window.shell.context().navigator().show(ScreenId.BETWEEN);
          assertThat(window.shell.message()).isEqualTo("Kept.");
          return 0;
        });
  }
}
