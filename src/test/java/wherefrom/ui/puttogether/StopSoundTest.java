package wherefrom.ui.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.ports.Sounds.Cue;
import wherefrom.parts.Action;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.CueSounds;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.HandTicker;
import wherefrom.ui.sample.Heard;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** A stop is heard until somebody has dealt with it. */
class StopSoundTest {
  private final HandTicker time = new HandTicker();
  private final Heard heard = new Heard();
  private final SampleJob sample = SampleJob.apart();
  private final SampleWindow window = Toolkit.on(this::opened);

  private SampleWindow opened() {
    SampleWindow made = new SampleWindow(96, 100);
    made.sounds = new CueSounds(heard, time);
    made.shell.context().open(sample.job);
    made.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
    return made;
  }

  private void scan(String digits) {
    inWindow(() -> window.scan(digits));
  }

  private void inWindow(Runnable deed) {
    Toolkit.on(
        () -> {
          deed.run();
          return window;
        });
  }

  private void stop() {
    scan(sample.tag("pushrod@3EX"));
    scan(sample.card("5EX"));
    assertThat(heard.take()).containsExactly(Cue.STOP);
    time.pass(6000);
    assertThat(heard.take()).containsExactly(Cue.STOP, Cue.STOP);
  }

  private void isSilent() {
    time.pass(30_000);
    assertThat(heard.take()).isEmpty();
  }

  @Test
  void takingTheScanBackEndsIt() {
    stop();
    scan(sample.action(Action.UNDO));
    isSilent();
  }

  @Test
  void theRightPartEndsIt() {
    stop();
    scan(sample.tag("pushrod@5EX"));
    assertThat(heard.take()).containsExactly(Cue.RIGHT);
    isSilent();
  }

  @Test
  void fittingOnPurposeEndsIt() {
    stop();
    inWindow(
        () -> {
          window.layOut();
          window.press("Fit it here on purpose");
          window.press("matched pair");
        });
    for (Action card : List.of(Action.NEXT, Action.NEXT, Action.YES, Action.YES)) {
      inWindow(
          () -> {
            window.layOut();
            window.scan(sample.action(card));
          });
    }
    heard.take();
    isSilent();
  }

  @Test
  void whileItStandsItIsNotEndedByWhatSolvesNothing() {
    stop();
    scan(sample.action(Action.SKIP));
    scan(sample.action(Action.HELP));
    time.pass(3000);
    assertThat(heard.take()).contains(Cue.STOP);
  }

  @Test
  void anotherScreenIsQuietAndComingBackItSoundsAgain() {
    stop();
    inWindow(() -> window.shell.context().navigator().show(ScreenId.BENCH_MAP));
    isSilent();
    inWindow(() -> window.shell.context().navigator().back());
    assertThat(heard.take()).containsExactly(Cue.STOP);
    time.pass(3000);
    assertThat(heard.take()).containsExactly(Cue.STOP);
  }
}
