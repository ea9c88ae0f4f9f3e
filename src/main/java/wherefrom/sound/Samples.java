package wherefrom.sound;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.List;

/** Tones as signed 16-bit samples, one channel, little end first. */
final class Samples {
  static final int RATE_HZ = 44_100;
  static final int BYTES = 2;

  /** Begins and ends softly: a hard edge clicks. */
  private static final int ATTACK_MS = 12;

  private static final int RELEASE_MS = 40;
  private static final int MS_PER_SECOND = 1000;

  private Samples() {}

  /**
   * @param volume 0 to 1; the loudest sample is that part of full scale
   */
  static byte[] of(List<Tone> tones, double volume) {
    int count = tones.stream().mapToInt(tone -> samples(tone.ms())).sum();
    ByteBuffer samples = ByteBuffer.allocate(count * BYTES).order(ByteOrder.LITTLE_ENDIAN);
    for (Tone tone : tones) {
      put(tone, volume * Short.MAX_VALUE, samples);
    }
    return samples.array();
  }

  private static void put(Tone tone, double amplitude, ByteBuffer samples) {
    int count = samples(tone.ms());
    for (int index = 0; index < count; index++) {
      double swing = Math.sin(2 * Math.PI * tone.hertz() * index / RATE_HZ);
      samples.putShort((short) Math.round(amplitude * envelope(index, count) * swing));
    }
  }

  /** Half a cosine up, half a cosine down. */
  private static double envelope(int index, int count) {
    double up = Math.min(1, index / (double) samples(ATTACK_MS));
    double down = Math.min(1, (count - 1 - index) / (double) samples(RELEASE_MS));
    return (1 - Math.cos(Math.PI * Math.min(up, down))) / 2;
  }

  private static int samples(int ms) {
    return RATE_HZ * ms / MS_PER_SECOND;
  }
}
