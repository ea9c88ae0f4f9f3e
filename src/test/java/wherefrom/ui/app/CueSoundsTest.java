package wherefrom.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.job.ports.Sounds.Cue;
import wherefrom.ui.sample.HandTicker;
import wherefrom.ui.sample.Heard;

/** What is heard, and when. */
class CueSoundsTest {
  private final HandTicker time = new HandTicker();
  private final Heard heard = new Heard();
  private final CueSounds sounds = new CueSounds(heard, time);

  @Test
  void aStopSoundsAgainEveryThreeSecondsUntilItIsHandled() {
    sounds.play(wherefrom.rules.Cue.STOP);
    assertThat(heard.take()).containsExactly(Cue.STOP);
    time.pass(2999);
    assertThat(heard.take()).isEmpty();
    time.pass(1);
    assertThat(heard.take()).containsExactly(Cue.STOP);
    time.pass(30_000);
    assertThat(heard.take()).hasSize(10).containsOnly(Cue.STOP);
    sounds.hush();
    time.pass(30_000);
    assertThat(heard.take()).isEmpty();
    assertThat(time.isStill()).isTrue();
  }

  @Test
  void anotherCueEndsTheStopAndSoundsOnce() {
    sounds.play(wherefrom.rules.Cue.STOP);
    time.pass(1000);
    sounds.play(wherefrom.rules.Cue.RIGHT);
    time.pass(30_000);
    assertThat(heard.take()).containsExactly(Cue.STOP, Cue.RIGHT);
    sounds.play(wherefrom.rules.Cue.ASK);
    time.pass(30_000);
    assertThat(heard.take()).containsExactly(Cue.ASK);
  }

  @Test
  void theNextStopBeginsItsThreeSecondsAnew() {
    sounds.play(wherefrom.rules.Cue.STOP);
    time.pass(2900);
    sounds.play(wherefrom.rules.Cue.STOP);
    assertThat(heard.take()).hasSize(2);
    time.pass(2900);
    assertThat(heard.take()).isEmpty();
    time.pass(100);
    assertThat(heard.take()).containsExactly(Cue.STOP);
  }

  @Test
  void theLoudspeakerIsTurnedFullyUp() {
    assertThat(heard.volume()).isEqualTo(1);
  }
}
