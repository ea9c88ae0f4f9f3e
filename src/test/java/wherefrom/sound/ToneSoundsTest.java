package wherefrom.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wherefrom.job.ports.Sounds.Cue;

@Timeout(30)
class ToneSoundsTest {
  private final BlockingQueue<byte[]> written = new LinkedBlockingQueue<>();
  private final List<String> calls = Collections.synchronizedList(new ArrayList<>());

  /** A line that keeps what is written to it. */
  private SourceDataLine line() {
    return (SourceDataLine)
        Proxy.newProxyInstance(
            getClass().getClassLoader(),
            new Class<?>[] {SourceDataLine.class},
            (proxy, method, arguments) -> {
              calls.add(method.getName());
              if (method.getName().equals("write")) {
                written.add(((byte[]) arguments[0]).clone());
                return arguments[2];
              }
              return null;
            });
  }

  @ParameterizedTest
  @EnumSource
  void aCueIsPlayedToItsEndAndTheLineIsClosed(Cue cue) {
    assertThat(new Loudspeaker(format -> line()).play(Samples.of(Tone.listOf(cue), 0.5))).isTrue();
    assertThat(written.remove()).isEqualTo(Samples.of(Tone.listOf(cue), 0.5));
    assertThat(calls).containsExactly("open", "start", "write", "drain", "close");
  }

  @Test
  void playingReturnsAtOnceAndFollowsTheVolume() throws InterruptedException {
    ToneSounds sounds = new ToneSounds(1, new Loudspeaker(format -> line()));
    sounds.play(Cue.RIGHT);
    assertThat(written.poll(10, TimeUnit.SECONDS)).isEqualTo(Samples.of(Tone.listOf(Cue.RIGHT), 1));
    sounds.setVolume(0.25);
    sounds.play(Cue.STOP);
    assertThat(written.poll(10, TimeUnit.SECONDS))
        .isEqualTo(Samples.of(Tone.listOf(Cue.STOP), 0.25));
  }

  @Test
  void volumeZeroIsOff() throws InterruptedException {
    ToneSounds sounds = new ToneSounds(0, new Loudspeaker(format -> line()));
    sounds.play(Cue.STOP);
    sounds.setVolume(1);
    sounds.play(Cue.ASK);
    assertThat(written.poll(10, TimeUnit.SECONDS)).isEqualTo(Samples.of(Tone.listOf(Cue.ASK), 1));
    assertThat(written).isEmpty();
  }

  @Test
  void withoutADeviceItStaysQuiet() {
    byte[] samples = Samples.of(Tone.listOf(Cue.RIGHT), 1);
    Loudspeaker.Lines unsupported =
        format -> {
          throw new IllegalArgumentException("No line matching interface SourceDataLine");
        };
    Loudspeaker.Lines taken =
        format -> {
          throw new LineUnavailableException("line with format not supported");
        };
    Loudspeaker.Lines broken =
        format -> {
          throw new UnsatisfiedLinkError("libasound.so.2");
        };
    assertThat(new Loudspeaker(unsupported).play(samples)).isFalse();
    assertThat(new Loudspeaker(taken).play(samples)).isFalse();
    assertThat(new Loudspeaker(broken).play(samples)).isFalse();
  }

  @Test
  void onThisMachineACueNeverThrows() {
    assertThatCode(() -> new Loudspeaker().play(Samples.of(Tone.listOf(Cue.RIGHT), 0.01)))
        .doesNotThrowAnyException();
    assertThatCode(() -> new ToneSounds(0.01).play(Cue.RIGHT)).doesNotThrowAnyException();
  }

  @Test
  void aVolumeOutsideItsRangeIsRefused() {
    assertThatThrownBy(() -> new ToneSounds(1.1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new ToneSounds(0).setVolume(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("volume is not within 0 to 1: NaN");
  }
}
