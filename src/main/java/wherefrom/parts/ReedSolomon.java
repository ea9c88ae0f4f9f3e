package wherefrom.parts;

/**
 * Error correction codewords of a QR symbol: the remainder of the data codewords, times x to the
 * number of error correction codewords, divided by the generator polynomial over GF(256) with the
 * modulus x^8+x^4+x^3+x^2+1 (ISO/IEC 18004, error correction coding).
 */
final class ReedSolomon {
  private static final int MODULUS = 0x11D;
  private static final int UNITS = 255;

  /** The powers of 2, twice over, and to which power each number above 0 is. */
  private static final int[] POWER = new int[2 * UNITS];

  private static final int[] EXPONENT = new int[UNITS + 1];

  static {
    int power = 1;
    for (int exponent = 0; exponent < UNITS; exponent++) {
      POWER[exponent] = power;
      POWER[exponent + UNITS] = power;
      EXPONENT[power] = exponent;
      power = power << 1 ^ (power >> 7) * MODULUS;
    }
  }

  private final int[] generator;

  /**
   * @param count error correction codewords to a symbol
   */
  ReedSolomon(int count) {
    generator = generator(count);
  }

  /** The error correction codewords that follow the data codewords, each 0 to 255. */
  int[] errorCorrection(int[] data) {
    int count = generator.length - 1;
    int[] remainder = new int[count];
    for (int codeword : data) {
      int factor = codeword ^ remainder[0];
      System.arraycopy(remainder, 1, remainder, 0, count - 1);
      remainder[count - 1] = 0;
      for (int at = 0; at < count; at++) {
        remainder[at] ^= multiply(generator[at + 1], factor);
      }
    }
    return remainder;
  }

  /** The product of (x - 2^0) … (x - 2^(degree-1)), highest power first. */
  private static int[] generator(int degree) {
    int[] product = new int[degree + 1];
    product[0] = 1;
    for (int length = 1; length <= degree; length++) {
      for (int at = length; at > 0; at--) {
        product[at] ^= multiply(product[at - 1], POWER[length - 1]);
      }
    }
    return product;
  }

  private static int multiply(int left, int right) {
    return left == 0 || right == 0 ? 0 : POWER[EXPONENT[left] + EXPONENT[right]];
  }
}
