package wherefrom.ui.measure;

import java.util.Locale;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;

/** What is measured and what is read of it, without saying a word twice. */
final class ReadingTitle {
  private ReadingTitle() {}

  /**
   * @param named the subject's name
   * @param title of the plan, in small letters
   */
  static String of(Subject subject, String named, String title) {
    if (named.toLowerCase(Locale.ROOT).contains(title)) {
      return named;
    }
    return subject.match(part -> named, at -> placed(at, named, title), beside -> named)
        + ": "
        + title;
  }

  /** A title that begins with what is read needs the cylinder's number alone before it. */
  private static String placed(Subject.AFeature at, String named, String title) {
    boolean said = title.startsWith(at.feature().word());
    return said && at.feature().reach() == Feature.Reach.CYLINDER
        ? "Cylinder " + at.number()
        : named;
  }
}
