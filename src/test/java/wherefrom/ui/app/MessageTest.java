package wherefrom.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wherefrom.ui.Toolkit;
import wherefrom.ui.controls.FitText;
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
  void whatWasSaidOfAJobGoesWithIt() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          say(window, "Something to read.");
          window.nanos.addAndGet(LATER_NANOS);
          window.shell.context().open(SampleJob.whole().job);
          window.layOut();
          window.pressRail("Help");
          assertThat(window.words()).doesNotContain("Something to read.");
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

  @Test
  void aStopSaysOnItsOwnGlassWhatWasSaidAndKeepsItsLines() {
    Toolkit.on(
        () -> {
          SampleJob sample = SampleJob.apart();
          SampleWindow window = new SampleWindow(96, 100);
          window.shell.context().open(sample.job);
          window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
          window.scan(sample.tag("pushrod@3EX"));
          window.scan(sample.card("5EX"));
          window.layOut();
          sample.logbook.fail("The disk is full. Make room, then scan again.");
          window.press("UNDO");
          assertThat(seen(window)).contains("The disk is full. Make room, then scan again.");
          assertThat(seen(window)).contains("From: 3 EX");
          window.nanos.addAndGet(LATER_NANOS);
          window.press("Fit it here");
          window.press("matched pair");
          assertThat(seen(window)).doesNotContain("The disk is full");
          return 0;
        });
  }

  @Test
  void theLetterBoardSaysThatItTakesNoTagUntilTheNextLetter() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          window
              .shell
              .context()
              .navigator()
              .open(() -> new TextEntryScreen(window.shell.context(), "Note", "worn", words -> {}));
          window.layOut();
          say(window, "This screen takes no tag. Home, Bench, Apart and Together do.");
          assertThat(seen(window))
              .contains("This screen takes no tag. Home, Bench, Apart and Together do.");
          window.nanos.addAndGet(LATER_NANOS);
          window.press("a");
          assertThat(seen(window)).contains("Note: worna").doesNotContain("takes no tag");
          return 0;
        });
  }

  /** What was said on another screen, or before something else was done, is not said last here. */
  @Test
  void helpTellsNoSentenceOfLongAgo() {
    Toolkit.on(
        () -> {
          SampleWindow window = open();
          say(window, "Try it: press the red tag.");
          window.nanos.addAndGet(LATER_NANOS);
          window.pressRail("Help");
          assertThat(window.words()).contains("Try it");
          window.nanos.addAndGet(LATER_NANOS);
          window.press("Back");
          window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
          window.nanos.addAndGet(LATER_NANOS);
          window.layOut();
          window.press("Where to?");
          window.nanos.addAndGet(LATER_NANOS);
          window.pressRail("Help");
          assertThat(window.words()).contains("What now?").doesNotContain("Try it");
          return 0;
        });
  }

  /** The words that can be seen: of what is hidden none. */
  private static String seen(SampleWindow window) {
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
}
