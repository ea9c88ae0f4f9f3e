package wherefrom.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Rounding to whole smallest units. */
final class Whole {
  private Whole() {}

  /** The figure times the smallest units it is worth, halves away from zero. */
  static long rounded(BigDecimal figure, long smallestUnits) {
    return figure
        .multiply(BigDecimal.valueOf(smallestUnits))
        .setScale(0, RoundingMode.HALF_UP)
        .longValueExact();
  }
}
