package wherefrom.job.wedge;

import java.util.List;
import java.util.Locale;

/**
 * The digit rows of the layouts on which unshifted digit keys do not type digits. Source:
 * xkeyboard-config 2.35.1, keys AE01 to AE09 and AE10, first level. The rows of the first six were
 * also seen arriving in a window under an X server from the key codes of a US keyboard; with Caps
 * lock their letters arrive in upper case.
 *
 * <p>No two rows give a different digit to more than four shared characters, so that a code read
 * under the wrong row is next to impossible. Other layouts are taught by the set-up card.
 */
final class DigitRows {
  static final List<DigitRow> KNOWN =
      List.of(
          DigitRow.PLAIN,
          new DigitRow("French", "à&é\"'(-è_ç"),
          new DigitRow("Belgian", "à&é\"'(§è!ç"),
          new DigitRow("Czech", "é+ěščřžýáí"),
          new DigitRow("Lithuanian", "“ąčęėįšųū„"),
          new DigitRow("Hungarian", "ö123456789"),
          new DigitRow("Slovak", "é+ľščťžýáí"),
          new DigitRow("French, standard of 2019", "»àéèê()‘’«"),
          new DigitRow("French, ergonomic", "*\"«»()@+-/"),
          new DigitRow("Lithuanian, standard", ")!-/;:,.=("));

  private DigitRows() {}

  /**
   * The rows to try. A learned row that is not in the table stands alone with plain digits: it may
   * share many characters with a row of the table.
   */
  static List<DigitRow> of(ScannerSetup setup) {
    String learned = setup.learnedDigits();
    if (learned.isEmpty() || KNOWN.stream().anyMatch(row -> isSame(row, learned))) {
      return KNOWN;
    }
    return List.of(DigitRow.PLAIN, new DigitRow("learned", learned));
  }

  private static boolean isSame(DigitRow row, String learned) {
    return row.typed().equals(learned.toLowerCase(Locale.ROOT));
  }
}
