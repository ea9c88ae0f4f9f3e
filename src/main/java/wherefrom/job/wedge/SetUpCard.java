package wherefrom.job.wedge;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Reads the set-up card, whose code is the text {@code 0123456789}: what arrives shows how the
 * digits are typed, and what the scanner puts before and after.
 */
final class SetUpCard {
  private static final int DIGITS = 10;

  private SetUpCard() {}

  /**
   * The set-up that a burst shows while the card is expected. A row of the table may have a prefix
   * and a suffix round it, which are learned too; an unknown row only the ones set up already, and
   * an AIM identifier.
   */
  static Optional<ScannerSetup> read(Burst burst, ScannerSetup setup) {
    return known(burst).or(() -> unknown(burst, setup));
  }

  /** The set-up that a burst shows at any other time: exactly a row of the table. */
  static Optional<ScannerSetup> readUnasked(Burst burst, ScannerSetup setup) {
    return known(burst)
        .filter(
            learned ->
                learned.prefix().equals(setup.prefix()) && learned.suffix().equals(setup.suffix()));
  }

  private static Optional<ScannerSetup> known(Burst burst) {
    for (int from = 0; from + DIGITS <= burst.size(); from++) {
      String text = burst.text(from, from + DIGITS);
      for (DigitRow row : DigitRows.KNOWN) {
        if (row.typed().equals(text.toLowerCase(Locale.ROOT))) {
          int before = new Lead("").start(burst, row, from);
          String suffix = burst.text(from + DIGITS, burst.size());
          return Optional.of(new ScannerSetup(burst.text(0, before), suffix, row.typed()));
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<ScannerSetup> unknown(Burst burst, ScannerSetup setup) {
    String suffix = setup.suffix();
    int end =
        burst.endsWith(suffix, burst.size())
            ? burst.size() - suffix.codePointCount(0, suffix.length())
            : burst.size();
    int from = end - DIGITS;
    if (from < 0 || !ScannerSetup.isDigitRow(burst.text(from, end))) {
      return Optional.empty();
    }
    DigitRow row = new DigitRow("learned", burst.text(from, end));
    boolean whole = leadStart(burst, row, setup.prefix(), from) == 0;
    return whole
        ? Optional.of(new ScannerSetup(setup.prefix(), suffix, row.typed()))
        : Optional.empty();
  }

  /** As on any layout, but the letter and the sign of the AIM identifier may be anything. */
  private static int leadStart(Burst burst, DigitRow row, String prefix, int from) {
    int start = new Lead(prefix).start(burst, row, from);
    if (start == 3 && from == 3) {
      OptionalInt modifier = row.digit(burst.at(2));
      return modifier.isPresent() && modifier.getAsInt() <= 3 ? 0 : start;
    }
    return start;
  }
}
