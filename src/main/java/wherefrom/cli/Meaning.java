package wherefrom.cli;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import wherefrom.job.JobPartNames;
import wherefrom.job.puttogether.FirstIn;
import wherefrom.job.tags.CodeLookup;
import wherefrom.parts.Place;
import wherefrom.parts.TagCode;
import wherefrom.rules.CodeVerdict;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictWords;
import wherefrom.text.Words;

/** What a code stands for, in words. */
final class Meaning {
  private Meaning() {}

  static String of(CodeLookup found) {
    return found.words();
  }

  /** The same with a full stop. */
  static String sentence(CodeLookup found) {
    return Words.withStop(of(found));
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

  /** A verdict as a row: its word, then its sentence with the way out; its lines in the JSON. */
  record Judged(Verdict verdict, VerdictWords words) implements Row {
    static Judged of(OpenedJob bench, Verdict verdict) {
      return new Judged(verdict, Meaning.words(bench, verdict));
    }

    @Override
    public String text() {
      return Row.lines(verdict.word(), told());
    }

    /** The sentence and the way out. */
    String told() {
      return Meaning.told(verdict, words);
    }

    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "verdict", verdict.word(),
          "stopped", verdict.stops(),
          "lines", words.lines(),
          "sentence", words.sentence(),
          "wayOut", words.advice());
    }
  }

  /**
   * A verdict on a part at a place.
   *
   * @param notIn the places that should have been filled before it
   * @param notice the same in a sentence; empty where nothing is to be said
   */
  record Fitted(Judged judged, List<String> notIn, String notice) implements Row {
    static Fitted of(OpenedJob bench, Verdict verdict) {
      Judged judged = Judged.of(bench, verdict);
      return verdict instanceof Verdict.RightPlace right
          ? of(judged, new FirstIn(bench.state()), right.place())
          : new Fitted(judged, List.of(), "");
    }

    private static Fitted of(Judged judged, FirstIn first, Place place) {
      List<String> under = first.under(place).stream().map(Place::words).toList();
      return new Fitted(judged, under, first.notice(place).orElse(""));
    }

    @Override
    public String text() {
      return notice.isEmpty() ? judged.text() : Row.lines(judged.text(), notice);
    }
  }

  /** All that a verdict says of this job. */
  static VerdictWords words(OpenedJob bench, Verdict verdict) {
    return verdict.words(new JobPartNames(bench.state()));
  }

  /** The sentence and the way out. */
  static String told(Verdict verdict, VerdictWords words) {
    return verdict instanceof CodeVerdict.AlsoFits question
        ? AskFirst.sentence(question)
        : words.told();
  }
}
