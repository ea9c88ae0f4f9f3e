package wherefrom.parts;

/**
 * Error correction codewords of a QR symbol: the remainder of the data codewords, times x to the
 * number of error correction codewords, divided by the generator polynomial over GF(256) with the
 * modulus x^8+x^4+x^3+x^2+1 (ISO/IEC 18004, error correction coding).
 */
final class ReedSolomon {
  private static final int MODULUS = 0x11D;

  private ReedSolomon() {}

  /** The error correction codewords that follow the data codewords, each 0 to 255. */
  static int[] errorCorrection(int[] data, int count) {
    int[] generator = generator(count);
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
    int root = 1;
    for (int length = 1; length <= degree; length++) {
      for (int at = length; at > 0; at--) {
        product[at] ^= multiply(product[at - 1], root);
      }
      root = multiply(root, 2);
    }
    return product;
  }

  static int multiply(int left, int right) {
    int product = 0;
    for (int bit = 7; bit >= 0; bit--) {
      product = product << 1 ^ ((product & 0x80) == 0 ? 0 : MODULUS);
      product ^= (right >> bit & 1) * left;
    }
    return product;
  }
}
