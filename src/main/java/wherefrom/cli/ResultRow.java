package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wherefrom.inspection.measure.Judgement;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OilClearances;
import wherefrom.workings.ResultValue;

/** A result of readings: each value with its uncertainty, limit and answer. */
record ResultRow(
    String subject,
    String words,
    String plan,
    String tool,
    boolean whole,
    boolean confirmed,
    List<Value> values,
    Row.Beside told)
    implements Row {

  /** A value of the result; without a limit those fields are empty. */
  record Value(
      String key,
      double value,
      double uncertainty,
      String unit,
      String limit,
      String source,
      String answer) {
    static Value of(ResultValue value, Optional<Judgement> judged) {
      return new Value(
          value.key(),
          value.value(),
          value.standardUncertainty(),
          value.unit().symbol(),
          judged.map(judgement -> judgement.limit().words()).orElse(""),
          judged.map(judgement -> judgement.limit().source()).orElse(""),
          judged.map(ResultRow::word).orElse(""));
    }
  }

  static ResultRow of(Bench bench, MeasuredResult result) {
    String words = Subjects.words(bench, result.subject());
    List<Value> values =
        result.values().stream().map(value -> Value.of(value, judgement(result, value))).toList();
    return new ResultRow(
        Subjects.code(bench, result.subject()),
        words,
        result.plan().key(),
        result.tool().name(),
        result.isWhole(),
        result.confirmed(),
        values,
        new Row.Beside(String.join("\n", lines(bench, result, words))));
  }

  private static Optional<Judgement> judgement(MeasuredResult result, ResultValue value) {
    return result.judgements().stream()
        .filter(judgement -> judgement.value().key().equals(value.key()))
        .findFirst();
  }

  private static List<String> lines(Bench bench, MeasuredResult result, String words) {
    List<String> lines = new ArrayList<>();
    String unjudged =
        String.format(
            Locale.ROOT,
            ": %d of %d readings, not judged yet",
            result.samples().size(),
            result.plan().stations().size());
    lines.add(words + ", " + result.plan().title() + (result.isWhole() ? "" : unjudged));
    for (ResultValue value : result.values()) {
      String none = Answer.cells(value.key(), value.text(), "no limit");
      lines.add(judgement(result, value).map(ResultRow::line).orElse(none));
    }
    new OilClearances(bench.state())
        .find(result.subject())
        .map(bearing -> Answer.cells("oil-clearance", bearing.words(), bearing.sentence()))
        .ifPresent(lines::add);
    return lines;
  }

  private static String line(Judgement judgement) {
    return Answer.cells(
        judgement.value().key(),
        judgement.value().text(),
        word(judgement),
        judgement.limit().words() + " (" + judgement.limit().source() + ")");
  }

  static String word(Judgement judgement) {
    return judgement.decision().name().toLowerCase(Locale.ROOT);
  }

  @Override
  public String text() {
    return told.text();
  }
}
