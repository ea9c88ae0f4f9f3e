package wherefrom.job.wedge;

import java.util.OptionalInt;

/**
 * How the digits 0 to 9 arrive from a scanner that types as a US keyboard, on one keyboard layout.
 * Caps lock changes the case of letters only, so case is ignored.
 */
final class DigitRow {
  /** Digits that arrive as digits, of any script: Character.digit knows the Unicode decimals. */
  static final DigitRow PLAIN = new DigitRow("plain digits", "0123456789");

  private final String layout;
  private final String typed;
  private final int[] keys;

  /**
   * @param typed what arrives for 0, 1, … 9
   */
  DigitRow(String layout, String typed) {
    if (!ScannerSetup.isDigitRow(typed)) {
      throw new IllegalArgumentException(layout + ": not ten different characters: " + typed);
    }
    this.layout = layout;
    this.typed = typed;
    this.keys = typed.codePoints().map(Character::toLowerCase).toArray();
  }

  String layout() {
    return layout;
  }

  String typed() {
    return typed;
  }

  /** The digit a character stands for on this layout. */
  OptionalInt digit(int codePoint) {
    if (this == PLAIN) {
      int value = Character.digit(codePoint, 10);
      return value < 0 ? OptionalInt.empty() : OptionalInt.of(value);
    }
    int folded = Character.toLowerCase(codePoint);
    for (int value = 0; value < keys.length; value++) {
      if (keys[value] == folded) {
        return OptionalInt.of(value);
      }
    }
    return OptionalInt.empty();
  }
}
