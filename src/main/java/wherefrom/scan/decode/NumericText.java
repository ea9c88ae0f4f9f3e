package wherefrom.scan.decode;

import java.util.Locale;
import java.util.Optional;
import wherefrom.parts.TagSymbol;

/** Digits from the data codewords of a symbol in numeric mode (ISO/IEC 18004, numeric mode). */
final class NumericText {
  private static final int NUMERIC = 0b0001;
  private final int[] codewords;
  private int at;

  private NumericText(int[] codewords) {
    this.codewords = codewords;
  }

  /** The sixteen digits; empty for any other mode, length or group of digits. */
  static Optional<String> findSixteenDigits(int[] codewords) {
    NumericText text = new NumericText(codewords);
    if (text.take(4) != NUMERIC || text.take(10) != 16) {
      return Optional.empty();
    }
    StringBuilder digits = new StringBuilder();
    for (int group = 0; group < 5; group++) {
      int value = text.take(10);
      if (value > 999) {
        return Optional.empty();
      }
      digits.append(String.format(Locale.ROOT, "%03d", value));
    }
    int last = text.take(4);
    boolean ended = text.take(4) == 0 && text.at == 8 * TagSymbol.DATA_CODEWORDS;
    return last <= 9 && ended ? Optional.of(digits.append(last).toString()) : Optional.empty();
  }

  private int take(int bits) {
    int value = 0;
    for (int bit = 0; bit < bits; bit++) {
      value = (value << 1) | ((codewords[at / 8] >> (7 - at % 8)) & 1);
      at++;
    }
    return value;
  }
}
