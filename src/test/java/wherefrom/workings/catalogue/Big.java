package wherefrom.workings.catalogue;

import ch.obermuhlner.math.big.BigDecimalMath;
import java.math.BigDecimal;
import java.math.MathContext;

/** Arithmetic to 50 digits, with sine and cosine from a library of its own. */
record Big(BigDecimal value) {
  static final MathContext DIGITS = new MathContext(50);
  static final Big PI = new Big(BigDecimalMath.pi(DIGITS));

  static Big of(String decimal) {
    return new Big(new BigDecimal(decimal));
  }

  static Big of(long whole) {
    return new Big(BigDecimal.valueOf(whole));
  }

  Big plus(Big other) {
    return new Big(value.add(other.value, DIGITS));
  }

  Big minus(Big other) {
    return new Big(value.subtract(other.value, DIGITS));
  }

  Big times(Big other) {
    return new Big(value.multiply(other.value, DIGITS));
  }

  Big times(long factor) {
    return times(of(factor));
  }

  Big over(Big other) {
    return new Big(value.divide(other.value, DIGITS));
  }

  Big over(long divisor) {
    return over(of(divisor));
  }

  Big power(int exponent) {
    return new Big(value.pow(exponent, DIGITS));
  }

  Big abs() {
    return new Big(value.abs());
  }

  Big max(Big other) {
    return new Big(value.max(other.value));
  }

  Big min(Big other) {
    return new Big(value.min(other.value));
  }

  Big sine() {
    return new Big(BigDecimalMath.sin(radians(), DIGITS));
  }

  Big cosine() {
    return new Big(BigDecimalMath.cos(radians(), DIGITS));
  }

  private BigDecimal radians() {
    return times(PI).over(180).value;
  }
}
