package wherefrom.sound;

import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/** The system's default way to play sound. */
final class Loudspeaker {
  private static final AudioFormat FORMAT =
      new AudioFormat(Samples.RATE_HZ, 8 * Samples.BYTES, 1, true, false);

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

  /**
   * Plays samples to their end.
   *
   * @return false where there is nothing to play them on
   */
  boolean play(byte[] samples) {
    try (SourceDataLine line = lines.find(FORMAT)) {
      line.open(FORMAT);
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
