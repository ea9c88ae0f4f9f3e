package wherefrom.ui.controls;

import java.util.Locale;

/** Words as they begin a line. */
public final class Words {
  private Words() {}

  /** The words with a capital first letter. */
  public static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
