package wherefrom.job;

import java.util.Optional;
import wherefrom.quantity.Amount;

/**
 * The size of the part that fits a surface, as a step from standard.
 *
 * @param step 0 for standard; empty while it is not known
 * @param basis what it rests on
 * @param words {@code 0.010 in under (ten under)}, or why it is not known and what to do
 */
public record FittingSize(Optional<Amount> step, Basis basis, String words) {

  /** What a fitting size rests on. */
  public enum Basis {
    /** The surface was cut to it. */
    CUT,
    /** Nobody recorded a cut; the surface measures so. */
    MEASURED,
    /** Nothing was cut and nothing measured: standard, as far as anybody knows. */
    PRESUMED,
    /** The surface is going to be cut to it. */
    COMING,
    UNKNOWN
  }

  static FittingSize of(Amount step, Basis basis, String words) {
    return new FittingSize(Optional.of(step), basis, words);
  }

  static FittingSize unknown(String why) {
    return new FittingSize(Optional.empty(), Basis.UNKNOWN, "not known: " + why);
  }

  /** Whether somebody cut or measured it, or said to what it will be cut. */
  public boolean isKnown() {
    return step.isPresent() && basis != Basis.PRESUMED;
  }
}
