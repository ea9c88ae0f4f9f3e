package wherefrom.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A length in whole nanometres, so that 0.0001 in (2,540 nm) and 0.001 mm are both exact. One inch
 * is 25.4 mm exactly (international yard and pound agreement, 1959; from memory).
 */
public record Length(long nanometres) implements Comparable<Length> {
  public static final long NM_PER_MM = 1_000_000L;
  public static final long NM_PER_INCH = 25_400_000L;
  public static final Length ZERO = new Length(0);

  /** Rounds to the nearest nanometre, halves away from zero. */
  public static Length ofMillimetres(BigDecimal millimetres) {
    return rounded(millimetres.multiply(BigDecimal.valueOf(NM_PER_MM)));
  }

  /** Rounds to the nearest nanometre, halves away from zero. */
  public static Length ofInches(BigDecimal inches) {
    return rounded(inches.multiply(BigDecimal.valueOf(NM_PER_INCH)));
  }

  private static Length rounded(BigDecimal nanometres) {
    return new Length(nanometres.setScale(0, RoundingMode.HALF_UP).longValueExact());
  }

  public double millimetres() {
    return (double) nanometres / NM_PER_MM;
  }

  @Override
  public int compareTo(Length other) {
    return Long.compare(nanometres, other.nanometres);
  }
}
