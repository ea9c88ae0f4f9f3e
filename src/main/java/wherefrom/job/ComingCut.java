package wherefrom.job;

import java.util.Optional;
import wherefrom.quantity.Amount;

/**
 * A cut that is going to be made.
 *
 * @param size the diameter or the step that is wanted; empty where nobody said
 * @param by {@code plan 2} or {@code visit 1}
 */
public record ComingCut(Optional<Amount> size, String by) {

  /** The same as a cut that is made, to be reckoned with. */
  LastCut made() {
    return new LastCut(Long.MAX_VALUE, size, false);
  }
}
