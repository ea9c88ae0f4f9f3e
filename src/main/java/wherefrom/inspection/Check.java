package wherefrom.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.parts.PartKind;

/**
 * A quick test at the bench, in words that a helper understands.
 *
 * @param key the name in files; never changes
 * @param of the key of the kind of part, or of the feature, that it is for
 * @param title the question that it answers
 * @param how what to do
 * @param where where to look, beside the drawing
 * @param pass what is good
 * @param suspect what must be measured or shown to someone
 * @param fail what is bad
 * @param printed figures seen in print, of other engines
 * @param source where the test comes from
 * @param plan the readings that settle a suspect answer; empty where none do
 * @param dirty true of a test to be made before washing
 */
public record Check(
    String key,
    String of,
    String title,
    String how,
    String where,
    String pass,
    String suspect,
    String fail,
    List<Printed> printed,
    String source,
    Optional<String> plan,
    boolean dirty) {

  public Check {
    printed = List.copyOf(printed);
  }

  /** This test and its answer, such as {@code Is it straight? suspect}. */
  public String answered(Look look) {
    return answered(title, look);
  }

  /** The same of a test that is known by its title alone. */
  public static String answered(String title, Look look) {
    return title + (title.endsWith("?") ? " " : ": ") + look.word();
  }

  static Check of(PartKind kind, String key, String title) {
    return start(kind.key(), key, title);
  }

  static Check of(Feature feature, String key, String title) {
    return start(feature.key(), key, title);
  }

  private static Check start(String of, String key, String title) {
    return new Check(
        key, of, title, "", "", "", "", "", List.of(), Sources.PRACTICE, Optional.empty(), false);
  }

  Check how(String words, String spot) {
    return new Check(
        key, of, title, words, spot, pass, suspect, fail, printed, source, plan, dirty);
  }

  Check tells(String good, String doubtful, String bad) {
    return new Check(key, of, title, how, where, good, doubtful, bad, printed, source, plan, dirty);
  }

  Check printed(String words, String in) {
    List<Printed> more = new ArrayList<>(printed);
    more.add(new Printed(words, in));
    return new Check(key, of, title, how, where, pass, suspect, fail, more, source, plan, dirty);
  }

  Check source(String in) {
    return new Check(key, of, title, how, where, pass, suspect, fail, printed, in, plan, dirty);
  }

  Check settledBy(String readings) {
    return new Check(
        key,
        of,
        title,
        how,
        where,
        pass,
        suspect,
        fail,
        printed,
        source,
        Optional.of(readings),
        dirty);
  }

  Check beforeWashing() {
    return new Check(key, of, title, how, where, pass, suspect, fail, printed, source, plan, true);
  }
}
