package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;
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

  /** The panel of a part that came out goes by itself: a finger on its way meets other keys. */
  @Test
  void noTapCountsOnWhatHasJustComeUpByItself() throws TimeoutException {
    SampleWindow window = Toolkit.on(() -> open(ScreenId.TAKE_APART));
    Toolkit.on(
        () -> {
          scan(window, sample.tag("rocker@1IN"));
          window.moment();
          assertThat(window.words()).contains("Undo this");
          return window;
        });
    WaitForAsyncUtils.waitFor(
        20, TimeUnit.SECONDS, () -> Toolkit.on(() -> !window.words().contains("Undo this")));
    Toolkit.on(
        () -> {
          window.layOut();
          window.tap(target(window, "Note"));
          assertThat(window.shell.current().title()).isEqualTo("Take apart");
          window.press("Note");
          assertThat(window.shell.current().title()).isNotEqualTo("Take apart");
          return window;
        });
  }

  private static void scan(SampleWindow window, String text) {
    window.nanos.addAndGet(1000 * MILLI);
    window.scan(text);
    window.layOut();
  }
}
