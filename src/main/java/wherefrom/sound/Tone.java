package wherefrom.sound;

import java.util.List;
import wherefrom.job.ports.Sounds.Cue;

/**
 * A pure tone, or a silence. The tones of the cues lie between 500 and 2000 Hz, which small
 * loudspeakers can give and most ears hear, and more than a major third apart.
 *
 * @param hertz the frequency; 0 for silence
 * @param ms how long it lasts
 */
record Tone(double hertz, int ms) {

  /** The tones of a cue, one after the other. */
  static List<Tone> listOf(Cue cue) {
    return switch (cue) {
      case RIGHT -> List.of(new Tone(1760, 130));
      case STOP -> List.of(new Tone(660, 220), new Tone(0, 60), new Tone(520, 320));
      case ASK -> List.of(new Tone(1100, 260));
    };
  }
}
