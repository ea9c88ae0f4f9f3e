package wherefrom.scan.decode;

/** Arithmetic in GF(256) with the modulus x^8+x^4+x^3+x^2+1 of QR symbols (ISO/IEC 18004). */
final class Galois {
  private static final int MODULUS = 0x11D;
  private static final int[] POWER = new int[512];
  private static final int[] LOGARITHM = new int[256];

  static {
    int value = 1;
    for (int exponent = 0; exponent < 255; exponent++) {
      POWER[exponent] = value;
      POWER[exponent + 255] = value;
      LOGARITHM[value] = exponent;
      value <<= 1;
      value ^= value > 255 ? MODULUS : 0;
    }
  }

  private Galois() {}

  static int multiply(int left, int right) {
    return left == 0 || right == 0 ? 0 : POWER[LOGARITHM[left] + LOGARITHM[right]];
  }

  static int divide(int left, int right) {
    return left == 0 ? 0 : POWER[LOGARITHM[left] + 255 - LOGARITHM[right]];
  }

  /** 2 to a power of any sign. */
  static int power(int exponent) {
    return POWER[Math.floorMod(exponent, 255)];
  }

  /** Value of a polynomial, lowest coefficient first. */
  static int evaluate(int[] polynomial, int x) {
    int value = 0;
    for (int at = polynomial.length - 1; at >= 0; at--) {
      value = multiply(value, x) ^ polynomial[at];
    }
    return value;
  }

  /** The product, cut off after so many coefficients. */
  static int[] product(int[] left, int[] right, int length) {
    int[] product = new int[length];
    for (int at = 0; at < left.length; at++) {
      for (int by = 0; by < right.length && at + by < length; by++) {
        product[at + by] ^= multiply(left[at], right[by]);
      }
    }
    return product;
  }
}
