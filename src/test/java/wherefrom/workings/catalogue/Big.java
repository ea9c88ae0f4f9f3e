package wherefrom.workings.catalogue;

import ch.obermuhlner.math.big.BigDecimalMath;
import java.math.BigDecimal;
import java.math.MathContext;

/** Arithmetic to 50 digits, with sine and cosine from a library of its own. */
public record Big(BigDecimal value) {
  public static final MathContext DIGITS = new MathContext(50);
  public static final Big PI = new Big(BigDecimalMath.pi(DIGITS));

  public static Big of(String decimal) {
    return new Big(new BigDecimal(decimal));
  }

  public static Big of(long whole) {
    return new Big(BigDecimal.valueOf(whole));
  }

  public Big plus(Big other) {
    return new Big(value.add(other.value, DIGITS));
  }

  public Big minus(Big other) {
    return new Big(value.subtract(other.value, DIGITS));
  }

  public Big times(Big other) {
    return new Big(value.multiply(other.value, DIGITS));
  }

  public Big times(long factor) {
    return times(of(factor));
  }

  public Big over(Big other) {
    return new Big(value.divide(other.value, DIGITS));
  }

  public Big over(long divisor) {
    return over(of(divisor));
  }

  public Big power(int exponent) {
    return new Big(value.pow(exponent, DIGITS));
  }

  public Big abs() {
    return new Big(value.abs());
  }

  public Big max(Big other) {
    return new Big(value.max(other.value));
  }

  public Big min(Big other) {
    return new Big(value.min(other.value));
  }

  public Big sine() {
    return new Big(BigDecimalMath.sin(radians(), DIGITS));
  }

  public Big cosine() {
    return new Big(BigDecimalMath.cos(radians(), DIGITS));
  }

  private BigDecimal radians() {
    return times(PI).over(180).value;
  }
}
