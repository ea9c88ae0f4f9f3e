package wherefrom.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.event.Event;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.inspect.Inspecting;
import wherefrom.parts.Action;
import wherefrom.ui.Toolkit;
import wherefrom.ui.decide.DecidePartScreen;
import wherefrom.ui.home.JobHomeScreen;
import wherefrom.ui.puttogether.PutTogetherScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.ui.takeapart.TakeApartScreen;

/** The six cards, where a screen does nothing of its own with them, and on a stop. */
class ActionCardsTest {
  private final SampleJob sample = SampleJob.apart();

  private SampleWindow open(ScreenId screen) {
    SampleWindow window = new SampleWindow(96, 100);
    window.shell.context().open(sample.job);
    window.shell.context().navigator().show(screen);
    window.layOut();
    return window;
  }

  private static void hand(SampleWindow window, String digits) {
    window.moment();
    (digits + "\r").codePoints().forEach(key -> type(window, Character.toString(key)));
    window.layOut();
  }

  private static void type(SampleWindow window, String character) {
    window.nanos.addAndGet(4_000_000L);
    Event.fireEvent(
        window.scene,
        new KeyEvent(
            KeyEvent.KEY_TYPED, character, "", KeyCode.UNDEFINED, false, false, false, false));
  }

  private static void card(SampleWindow window, Action action) {
    hand(window, action.code().digits());
  }

  @Test
  void yesPressesTheTagAndSkipGoesBack() {
    Toolkit.on(
        () -> {
          SampleWindow window = open(ScreenId.JOB_HOME);
          card(window, Action.YES);
          assertThat(window.shell.current()).isNotInstanceOf(JobHomeScreen.class);
          card(window, Action.SKIP);
          assertThat(window.shell.current()).isInstanceOf(JobHomeScreen.class);
          return 0;
        });
  }

  @Test
  void nextLeadsTheRingAndYesPressesWhatHasIt() {
    Toolkit.on(
        () -> {
          SampleWindow window = open(ScreenId.TAKE_APART);
          card(window, Action.NEXT);
          assertThat(window.words(window.scene.getFocusOwner())).startsWith("All are out");
          card(window, Action.NEXT);
          String second = window.words(window.scene.getFocusOwner());
          assertThat(second).isNotEmpty().doesNotStartWith("All are out");
          assertThat(window.shell.current()).isInstanceOf(TakeApartScreen.class);
          return 0;
        });
  }

  /** A stray card must solve no stop: the first YES shows the tag, the second presses it. */
  @Test
  void onAStopTheSecondYesPressesItsTag() {
    int item = sample.part("pushrod@3EX").item();
    new Inspecting(sample.job).answer(Subject.ofPart(item), "pushrod-roll", Look.SUSPECT, "");
    Toolkit.on(
        () -> {
          SampleWindow window = open(ScreenId.PUT_TOGETHER);
          hand(window, sample.tag("pushrod@3EX"));
          hand(window, sample.card("3EX"));
          card(window, Action.YES);
          assertThat(window.shell.current()).isInstanceOf(PutTogetherScreen.class);
          assertThat(window.shell.message()).startsWith("Scan YES once more");
          card(window, Action.YES);
          assertThat(window.shell.current()).isInstanceOf(DecidePartScreen.class);
          return 0;
        });
  }

  @Test
  void whereAReasonCountsYesLeadsToTheTagAndFitsNothing() {
    Toolkit.on(
        () -> {
          SampleWindow window = open(ScreenId.PUT_TOGETHER);
          hand(window, sample.tag("pushrod@3EX"));
          hand(window, sample.card("5EX"));
          int before = sample.job.history().size();
          card(window, Action.YES);
          card(window, Action.YES);
          assertThat(sample.job.history()).hasSize(before);
          card(window, Action.SKIP);
          assertThat(window.words()).contains("STOP");
          return 0;
        });
  }

  @Test
  void helpOnAStopSaysWhatLeadsOutOfIt() {
    Toolkit.on(
        () -> {
          SampleWindow window = open(ScreenId.PUT_TOGETHER);
          hand(window, sample.tag("pushrod@3EX"));
          hand(window, sample.card("5EX"));
          card(window, Action.HELP);
          assertThat(window.shell.current()).isInstanceOf(HelpScreen.class);
          assertThat(window.words()).contains("By cards: NEXT to a key, then YES;");
          card(window, Action.HELP);
          assertThat(window.shell.current()).isInstanceOf(HelpScreen.class);
          card(window, Action.SKIP);
          assertThat(window.words()).contains("STOP");
          return 0;
        });
  }

  @Test
  void repeatSaysTheLastSentenceAgainAndUndoTakesTheLastStepBack() {
    Toolkit.on(
        () -> {
          SampleWindow window = open(ScreenId.JOB_HOME);
          window.shell.context().say("The photograph is kept.");
          window.shell.context().navigator().show(ScreenId.BENCH_MAP);
          card(window, Action.REPEAT);
          assertThat(window.shell.message()).isEqualTo("The photograph is kept.");
          card(window, Action.UNDO);
          assertThat(window.shell.message()).startsWith("Press UNDO again");
          card(window, Action.UNDO);
          assertThat(window.shell.message()).startsWith("Undone: ");
          return 0;
        });
  }
}
