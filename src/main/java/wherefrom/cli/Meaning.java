package wherefrom.cli;

import java.util.Locale;
import java.util.Map;
import wherefrom.job.tags.Found;
import wherefrom.parts.TagCode;
import wherefrom.rules.CodeVerdict;
import wherefrom.rules.Verdict;
import wherefrom.text.Words;

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
        Locale.ROOT,
        "%s %s of engine %07d",
        code.type().word(),
        Words.number(code.item()),
        code.engine());
  }

  /** A verdict as a row: its word, then its sentence with the way out. */
  record Judged(Verdict verdict) implements Row {
    @Override
    public String text() {
      return Row.lines(verdict.word(), sentence(verdict));
    }

    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "verdict", verdict.word(),
          "stopped", verdict.stops(),
          "sentence", verdict.sentence(),
          "wayOut", verdict.wayOut());
    }
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
