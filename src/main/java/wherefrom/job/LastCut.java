package wherefrom.job;

import java.util.Optional;
import wherefrom.quantity.Amount;
import wherefrom.rules.size.CutSurface;
import wherefrom.rules.size.SizeText;

/**
 * The last cut of a journal or a bore.
 *
 * @param sequence the entry from which on it is so; readings of before are of the old surface
 * @param size the diameter, or the step from standard; empty where nobody said
 * @param other whether it is another piece instead, of which nobody knows whether it was cut
 */
public record LastCut(long sequence, Optional<Amount> size, boolean other) {

  /** How far from standard it was cut; empty while that can't be known. */
  public Optional<Amount> findOff(CutSurface surface, Optional<Amount> standard) {
    return size.flatMap(
        known ->
            SizeText.isDiameter(known)
                ? standard.map(from -> surface.off(from, known))
                : Optional.of(known));
  }

  /** The diameter it was cut to; empty while that can't be known. */
  public Optional<Amount> findDiameter(CutSurface surface, Optional<Amount> standard) {
    return size.flatMap(
        known ->
            SizeText.isDiameter(known)
                ? Optional.of(known)
                : standard.map(from -> surface.diameter(from, known)));
  }
}
