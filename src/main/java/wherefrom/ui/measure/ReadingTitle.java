package wherefrom.ui.measure;

import java.util.Locale;

/** What is measured and what is read of it, without saying a word twice. */
final class ReadingTitle {
  private ReadingTitle() {}

  /**
   * @param named the subject's name
   * @param title of the plan, in small letters
   */
  static String of(String named, String title) {
    if (named.toLowerCase(Locale.ROOT).contains(title)) {
      return named;
    }
    return named + ": " + title;
  }
}
