package wherefrom.sound;

import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/** The system's default way to play sound. */
final class Loudspeaker {
  /** Finds a line to play on; refuses by the exceptions of {@link AudioSystem}. */
  interface Lines {
    SourceDataLine find(AudioFormat format) throws LineUnavailableException;
  }

  private final Lines lines;

  Loudspeaker() {
    this(AudioSystem::getSourceDataLine);
  }

  Loudspeaker(Lines lines) {
    this.lines = lines;
  }

  private static AudioFormat format() {
    return new AudioFormat(Samples.RATE_HZ, 8 * Samples.BYTES, 1, true, false);
  }

  /**
   * Plays samples to their end.
   *
   * @return false where there is nothing to play them on
   */
  boolean play(byte[] samples) {
    AudioFormat format = format();
    try (SourceDataLine line = lines.find(format)) {
      line.open(format);
      line.start();
      line.write(samples, 0, samples.length);
      line.drain();
      return true;
    } catch (LineUnavailableException | RuntimeException | LinkageError noSound) {
      // Without a device Java throws IllegalArgumentException; a sound is never worth a failure.
      return false;
    }
  }
}
