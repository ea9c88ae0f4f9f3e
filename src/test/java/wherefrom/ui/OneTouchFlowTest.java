package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import org.junit.jupiter.api.Test;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.parts.Whereabouts;
import wherefrom.ui.app.RefusedScreen;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/**
 * One touch is one deed, UNDO says what it does, and no code is answered by another part's page.
 */
class OneTouchFlowTest {
  private static final long MILLI = 1_000_000L;

  private final SampleJob sample = SampleJob.whole();

  private SampleWindow open(ScreenId screen) {
    SampleWindow window = new SampleWindow(96, 100);
    window.shell.context().open(sample.job);
    window.shell.context().navigator().show(screen);
    window.layOut();
    return window;
  }

  private static Node target(SampleWindow window, String words) {
    return window.targets().stream()
        .filter(node -> window.words(node).startsWith(words))
        .findFirst()
        .orElseThrow();
  }

  private long out() {
    return sample.job.state().parts().stream()
        .filter(part -> part.where() == Whereabouts.OUT)
        .count();
  }

  @Test
  void quickTapsOnTheTagLogOnePartOut() {
    Toolkit.on(
        () -> {
          SampleWindow window = open(ScreenId.TAKE_APART);
          window.press("It is out");
          assertThat(out()).isEqualTo(1);
          for (int tap = 0; tap < 3; tap++) {
            window.nanos.addAndGet(120 * MILLI);
            window.tap(target(window, "It is out"));
          }
          assertThat(out()).isEqualTo(1);
          window.press("It is out");
          assertThat(out()).isEqualTo(2);
          return window;
        });
  }

  @Test
  void undoSaysWhatItTakesBackAndTwoQuickPressesTakeBackOne() {
    Toolkit.on(
        () -> {
          SampleWindow window = open(ScreenId.TAKE_APART);
          window.press("It is out");
          window.press("It is out");
          assertThat(target(window, "UNDO").getAccessibleText())
              .isEqualTo("UNDO: 1 IN pushrod came out");
          window.press("UNDO");
          window.nanos.addAndGet(300 * MILLI);
          window.tap(target(window, "UNDO"));
          assertThat(out()).isEqualTo(1);
          assertThat(target(window, "UNDO").getAccessibleText())
              .isEqualTo("UNDO: 1 IN rocker came out");
          assertThat(window.words()).contains("Undone: 0002 cylinder 1, intake, pushrod");
          return window;
        });
  }

  @Test
  void helpSaysWhatUndoWouldTakeBack() {
    Toolkit.on(
        () -> {
          SampleWindow window = new SampleWindow(96, 150);
          window.shell.context().open(sample.job);
          window.shell.context().navigator().show(ScreenId.TAKE_APART);
          window.scan(sample.tag("rocker@1IN"));
          window.pressRail("Help");
          assertThat(window.words()).contains("UNDO would take back 1 IN rocker came out");
          window.press("Back");
          window.press("UNDO");
          assertThat(out()).isZero();
          return window;
        });
  }

  @Test
  void aCodeThatMeansNothingIsAnsweredOverThePageOfThePartBefore() {
    String other = new TagCode(TagType.PART, SampleJob.OTHER_ENGINE, 7, 1).digits();
    Toolkit.on(
        () -> {
          SampleWindow window = open(ScreenId.INSPECT);
          scan(window, sample.tag("rocker@1IN"));
          assertThat(window.words()).contains("1 IN rocker");
          for (String wrong : new String[] {"4006381333931", other, sample.card("3EX"), "100000"}) {
            scan(window, wrong);
            assertThat(window.shell.current()).isInstanceOf(RefusedScreen.class);
            assertThat(window.words()).doesNotContain("1 IN rocker", "Pass");
          }
          scan(window, sample.tag("pushrod@1IN"));
          Screen current = window.shell.current();
          assertThat(current.title()).isEqualTo("1 IN pushrod");
          return window;
        });
  }

  /** Nothing goes by itself, and nothing moves: the keys say which part they mean. */
  @Test
  void whatCameOutStandsAndNoKeyMoves() {
    Toolkit.on(
        () -> {
          SampleWindow window = open(ScreenId.TAKE_APART);
          List<Bounds> before = places(window);
          scan(window, sample.tag("rocker@1IN"));
          assertThat(places(window)).isEqualTo(before);
          assertThat(window.words())
              .contains("OUT 1 IN rocker", "It is out: 1 IN pushrod", "Note 1 IN rocker");
          window.press("Note");
          assertThat(window.shell.current().title()).isEqualTo("Note: 1 IN rocker");
          return window;
        });
  }

  private static List<Bounds> places(SampleWindow window) {
    return Stream.of("It is out", "Suspect", "Photo", "Note", "Type code", "More")
        .map(words -> target(window, words))
        .map(node -> node.localToScene(node.getLayoutBounds()))
        .toList();
  }

  private static void scan(SampleWindow window, String text) {
    window.nanos.addAndGet(1000 * MILLI);
    window.scan(text);
    window.layOut();
  }
}
