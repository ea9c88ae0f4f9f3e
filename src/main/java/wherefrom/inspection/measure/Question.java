package wherefrom.inspection.measure;

import java.util.Optional;
import wherefrom.quantity.Amount;

/**
 * A reading that may be a slip. It is kept only when the person confirms it.
 *
 * @param station the station's key; empty where it is about several
 * @param reading the reading itself; absent where it is about several
 * @param meant what may have been meant; absent where nobody can say
 * @param sentence what is odd about it and what may be meant
 */
public record Question(
    Kind kind, String station, Optional<Amount> reading, Optional<Amount> meant, String sentence) {

  /** One of which nobody can say what was meant. */
  static Question of(Kind kind, String station, Optional<Amount> reading, String sentence) {
    return new Question(kind, station, reading, Optional.empty(), sentence);
  }

  /** What looks wrong. */
  public enum Kind {
    /** Inch typed for millimetre, or the other way round. */
    UNIT_SLIP,
    /** No such part is so large or so small. */
    IMPLAUSIBLE,
    /** Far from the others of its kind. */
    FAR_FROM_OTHERS,
    /** Repeats of one reading that differ by more than the tool can. */
    REPEATS_DIFFER
  }
}
