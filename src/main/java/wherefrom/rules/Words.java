package wherefrom.rules;

import java.util.Locale;
import wherefrom.parts.Part;

/** Small helpers for the sentences of verdicts. */
final class Words {
  private Words() {}

  static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** The part's number as it stands on its tag, four digits. */
  static String number(Part part) {
    return String.format(Locale.ROOT, "%04d", part.item());
  }
}
