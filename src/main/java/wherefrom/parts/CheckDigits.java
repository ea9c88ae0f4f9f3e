package wherefrom.parts;

/**
 * Two check digits by ISO/IEC 7064, MOD 97-10: a number with its check digits leaves 1 when divided
 * by 97.
 */
public final class CheckDigits {
  private static final int MODULUS = 97;

  private CheckDigits() {}

  /**
   * The two check digits of a number.
   *
   * @param digits decimal digits only, at least one
   */
  public static String of(String digits) {
    int rest = remainder(digits + "00");
    int check = MODULUS + 1 - rest;
    return check < 10 ? "0" + check : Integer.toString(check);
  }

  /** Whether a number that ends in its two check digits agrees with them. */
  public static boolean agree(String digitsWithCheck) {
    return digitsWithCheck.length() > 2 && remainder(digitsWithCheck) == 1;
  }

  /**
   * Whether two numbers have the same check digits, whatever the same digits are put behind both.
   */
  static boolean alike(long one, long other) {
    return Math.floorMod(one - other, MODULUS) == 0;
  }

  private static int remainder(String digits) {
    int rest = 0;
    for (int at = 0; at < digits.length(); at++) {
      int digit = digits.charAt(at) - '0';
      if (digit < 0 || digit > 9) {
        throw new IllegalArgumentException("not a digit at " + at + ": " + digits);
      }
      rest = (rest * 10 + digit) % MODULUS;
    }
    return rest;
  }
}
