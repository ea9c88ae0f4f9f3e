package wherefrom.workings.catalogue.basis;

import wherefrom.workings.Source;
import wherefrom.workings.maths.DualNumber;

/**
 * A least value of a gap or margin, with its source. It marks a result; it never stops one.
 *
 * @param words as shown
 * @param millimetres the value in mm, as a decimal
 */
public record Minimum(String words, String millimetres, Source source) {

  public DualNumber inBase() {
    return DualNumber.of(millimetres);
  }

  public boolean isUndercutBy(DualNumber gap) {
    return gap.isLessThan(inBase());
  }
}
