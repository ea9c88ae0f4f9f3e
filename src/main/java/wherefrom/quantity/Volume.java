package wherefrom.quantity;

import java.math.BigDecimal;

/**
 * A volume in whole nanolitres, so that 0.01 cc (10,000 nl) and one cubic inch (16,387,064 nl,
 * which is 2.54³ cc) are both exact.
 */
public record Volume(long nanolitres) implements Comparable<Volume> {
  public static final long NL_PER_CC = 1_000_000L;
  public static final long NL_PER_CUBIC_INCH = 16_387_064L;

  /** Rounds to the nearest nanolitre, halves away from zero. */
  public static Volume ofCubicCentimetres(BigDecimal cubicCentimetres) {
    return new Volume(Whole.rounded(cubicCentimetres, NL_PER_CC));
  }

  /** Rounds to the nearest nanolitre, halves away from zero. */
  public static Volume ofCubicInches(BigDecimal cubicInches) {
    return new Volume(Whole.rounded(cubicInches, NL_PER_CUBIC_INCH));
  }

  public double cubicCentimetres() {
    return (double) nanolitres / NL_PER_CC;
  }

  public double cubicInches() {
    return (double) nanolitres / NL_PER_CUBIC_INCH;
  }

  public Volume plus(Volume other) {
    return new Volume(Math.addExact(nanolitres, other.nanolitres));
  }

  public Volume minus(Volume other) {
    return new Volume(Math.subtractExact(nanolitres, other.nanolitres));
  }

  /** In cubic centimetres, exact. */
  public Amount amount() {
    return new Amount(BigDecimal.valueOf(nanolitres, 6), Unit.CUBIC_CENTIMETRE);
  }

  @Override
  public int compareTo(Volume other) {
    return Long.compare(nanolitres, other.nanolitres);
  }
}
