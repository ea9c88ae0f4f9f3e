package wherefrom.cli;

import java.util.Locale;
import wherefrom.job.tags.Found;
import wherefrom.parts.TagCode;
import wherefrom.rules.CodeVerdict;
import wherefrom.rules.Verdict;

/** What a code stands for, in words. */
final class Meaning {
  private Meaning() {}

  static String of(Found found) {
    return found.words();
  }

  /** The same with a full stop. */
  static String sentence(Found found) {
    String words = of(found);
    return words.endsWith(".") ? words : words + ".";
  }

  /** Where no job is at hand to ask. */
  static String of(TagCode code) {
    return String.format(
        Locale.ROOT, "%s %04d of engine %07d", code.type().word(), code.item(), code.engine());
  }

  /** {@code verdict}, {@code sentence}, {@code wayOut}. */
  static Fields fields(Verdict verdict) {
    return Fields.of("verdict", verdict.word())
        .and("stopped", verdict.stops())
        .and("sentence", verdict.sentence())
        .and("wayOut", verdict.wayOut());
  }

  /** The sentence and the way out. */
  static String sentence(Verdict verdict) {
    return verdict instanceof CodeVerdict.AlsoFits question
        ? AskFirst.sentence(question)
        : words(verdict);
  }

  static String words(Verdict verdict) {
    return (verdict.sentence() + " " + verdict.wayOut()).strip();
  }
}
