package wherefrom.job.wedge;

/**
 * How the user's scanner types.
 *
 * @param prefix what it types before each code, as it arrives; empty for none
 * @param suffix what it types after each code and before Enter, as it arrives; empty for none
 * @param learnedDigits how the digits 0 to 9 arrive, ten different characters; empty while no
 *     set-up card was read
 */
public record ScannerSetup(String prefix, String suffix, String learnedDigits) {
  /** No prefix, no suffix, nothing learned. */
  public static final ScannerSetup PLAIN = new ScannerSetup("", "", "");

  private static final int DIGITS = 10;

  public ScannerSetup {
    if (!learnedDigits.isEmpty() && !isDigitRow(learnedDigits)) {
      throw new IllegalArgumentException("not ten different characters: " + learnedDigits);
    }
  }

  /** Whether a text can stand for the ten digits: ten characters, no two alike. */
  public static boolean isDigitRow(String text) {
    return text.codePointCount(0, text.length()) == DIGITS
        && text.codePoints().map(Character::toLowerCase).distinct().count() == DIGITS
        && text.codePoints().noneMatch(Character::isISOControl);
  }
}
