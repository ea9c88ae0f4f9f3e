package wherefrom.workings;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Which way a figure goes when it is shown with fewer places than it has. A limit that a reading is
 * held against goes the way that claims less, as the uncertainty counts against whoever claims (ISO
 * 14253-1:2017, from two secondary texts): an upper limit of acceptance down, a lower one up.
 */
public enum Rounding {
  /** Halves away from zero. */
  NEAREST(RoundingMode.HALF_UP, 0),
  UP(RoundingMode.CEILING, 1),
  DOWN(RoundingMode.FLOOR, 1);

  /** Digits past these are what binary arithmetic left over. */
  private static final MathContext MEANT = new MathContext(12);

  private final RoundingMode mode;
  private final int morePlaces;

  Rounding(RoundingMode mode, int morePlaces) {
    this.mode = mode;
    this.morePlaces = morePlaces;
  }

  /** With the places usual for a unit, a limit with one more, so that little of it is given up. */
  BigDecimal rounded(BigDecimal figure, int usualPlaces) {
    int places = usualPlaces + morePlaces;
    return this == NEAREST
        ? figure.setScale(places, mode)
        : figure.round(MEANT).setScale(places, mode);
  }
}
