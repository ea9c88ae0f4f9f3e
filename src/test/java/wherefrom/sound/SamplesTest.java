package wherefrom.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.ShortBuffer;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wherefrom.job.ports.Sounds.Cue;

class SamplesTest {

  private static short[] samples(List<Tone> tones, double volume) {
    ByteBuffer bytes = ByteBuffer.wrap(Samples.of(tones, volume)).order(ByteOrder.LITTLE_ENDIAN);
    ShortBuffer shorts = bytes.asShortBuffer();
    short[] samples = new short[shorts.remaining()];
    shorts.get(samples);
    return samples;
  }

  /** The strength of one frequency, by Goertzel's recurrence. */
  private static double strength(short[] samples, int from, int to, double hertz) {
    double turn = 2 * Math.cos(2 * Math.PI * hertz / Samples.RATE_HZ);
    double one = 0;
    double two = 0;
    for (int index = from; index < to; index++) {
      double next = samples[index] + turn * one - two;
      two = one;
      one = next;
    }
    return Math.sqrt(one * one + two * two - turn * one * two) / (to - from);
  }

  /** The strongest frequency between 100 and 4000 Hz, to 5 Hz. */
  private static int loudestHertz(short[] samples, int from, int to) {
    return IntStream.rangeClosed(20, 800)
        .map(step -> step * 5)
        .boxed()
        .max(
            (one, other) ->
                Double.compare(
                    strength(samples, from, to, one), strength(samples, from, to, other)))
        .orElseThrow();
  }

  private static int sample(int ms) {
    return Samples.RATE_HZ * ms / 1000;
  }

  @Test
  void rightIsOneShortHighTone() {
    short[] samples = samples(Tone.listOf(Cue.RIGHT), 1);
    assertThat(loudestHertz(samples, 0, samples.length)).isBetween(1750, 1770);
    assertThat(samples.length).isLessThan(sample(200));
  }

  @Test
  void askIsOneMiddleTone() {
    short[] samples = samples(Tone.listOf(Cue.ASK), 1);
    assertThat(loudestHertz(samples, 0, samples.length)).isBetween(1090, 1110);
  }

  @Test
  void stopIsTwoLowTonesWithASilenceBetween() {
    short[] samples = samples(Tone.listOf(Cue.STOP), 1);
    assertThat(loudestHertz(samples, 0, sample(220))).isBetween(650, 670);
    assertThat(loudestHertz(samples, sample(280), samples.length)).isBetween(510, 530);
    assertThat(IntStream.range(sample(221), sample(279)).map(index -> samples[index]))
        .containsOnly(0);
  }

  @ParameterizedTest
  @EnumSource
  void everyToneLiesBetween500And2000HertzAndNoTwoCuesAreAlike(Cue cue) {
    short[] samples = samples(Tone.listOf(cue), 1);
    int loudest = loudestHertz(samples, 0, samples.length);
    assertThat(loudest).isBetween(500, 2000);
    for (Cue other : Cue.values()) {
      if (other != cue) {
        short[] others = samples(Tone.listOf(other), 1);
        double ratio = loudest / (double) loudestHertz(others, 0, others.length);
        // A major third is 5 to 4.
        assertThat(Math.max(ratio, 1 / ratio)).isGreaterThan(1.25);
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void theLoudestSampleIsTheVolumesPartOfFullScale(Cue cue) {
    for (double volume : new double[] {0, 0.25, 0.5, 1}) {
      int peak = 0;
      short[] samples = samples(Tone.listOf(cue), volume);
      for (short sample : samples) {
        peak = Math.max(peak, Math.abs(sample));
      }
      double full = volume * Short.MAX_VALUE;
      assertThat((double) peak).isBetween(0.98 * full - 1, full + 0.5);
    }
  }

  @ParameterizedTest
  @EnumSource
  void aCueBeginsAndEndsSoftly(Cue cue) {
    short[] samples = samples(Tone.listOf(cue), 1);
    int tenth = Short.MAX_VALUE / 10;
    for (int index = 0; index < sample(2); index++) {
      assertThat(Math.abs(samples[index])).isLessThan(tenth);
      assertThat(Math.abs(samples[samples.length - 1 - index])).isLessThan(tenth);
    }
  }
}
