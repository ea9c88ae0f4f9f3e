package wherefrom.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A figure with its unit, exactly as it was entered: 3.870 in keeps its three decimals.
 *
 * <p>Two amounts are equal only when figure, decimals and unit are; compare sizes with {@link
 * #inBase()}.
 */
public record Amount(BigDecimal number, Unit unit) {
  /** Digits carried where a conversion does not come out even. */
  private static final MathContext DIGITS = new MathContext(40, RoundingMode.HALF_EVEN);

  public static Amount of(String number, Unit unit) {
    return new Amount(new BigDecimal(number), unit);
  }

  public static Amount of(double number, Unit unit) {
    return new Amount(BigDecimal.valueOf(number), unit);
  }

  /** A plain number such as a ratio. */
  public static Amount ofNumber(String number) {
    return of(number, Unit.ONE);
  }

  public Dimension dimension() {
    return unit.dimension();
  }

  /**
   * The figure in the base unit of the dimension, exact unless the division does not come out even.
   */
  public BigDecimal inBase() {
    BigDecimal above = aboveZero().multiply(unit.numerator());
    boolean whole = unit.denominator().compareTo(BigDecimal.ONE) == 0;
    return whole ? above : above.divide(unit.denominator(), DIGITS);
  }

  /**
   * The same size in another unit, exact wherever it has up to 40 digits.
   *
   * @throws IllegalArgumentException where the other unit measures something else
   */
  public Amount to(Unit other) {
    if (other.dimension() != dimension()) {
      throw new IllegalArgumentException(unit + " cannot be turned into " + other);
    }
    if (other == unit) {
      return this;
    }
    BigDecimal above = aboveZero().multiply(unit.numerator()).multiply(other.denominator());
    BigDecimal below = unit.denominator().multiply(other.numerator());
    BigDecimal converted = above.divide(below, DIGITS).add(other.zero()).stripTrailingZeros();
    return new Amount(converted.scale() < 0 ? converted.setScale(0) : converted, other);
  }

  private BigDecimal aboveZero() {
    return number.subtract(unit.zero());
  }

  /** The figure in another unit as the nearest double. */
  public double in(Unit other) {
    return to(other).number().doubleValue();
  }

  /** Rounded to so many places after the point, halves away from zero. */
  public Amount rounded(int decimals) {
    return new Amount(number.setScale(decimals, RoundingMode.HALF_UP), unit);
  }

  /** In this unit, with every decimal of both. */
  public Amount plus(Amount other) {
    return new Amount(number.add(other.to(unit).number()), unit);
  }

  public Amount negated() {
    return new Amount(number.negate(), unit);
  }

  /** "0.0015 in", to the last digit entered, with a decimal point and no thousands mark. */
  public String text() {
    String gap = unit.symbol().isEmpty() || unit == Unit.PERCENT ? "" : " ";
    return number.toPlainString() + gap + unit.symbol();
  }
}
