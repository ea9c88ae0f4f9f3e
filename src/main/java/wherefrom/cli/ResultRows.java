package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import wherefrom.inspection.measure.Judgement;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OilClearances;
import wherefrom.workings.ResultValue;

/** Results of readings as rows: each value with its uncertainty, limit and answer. */
final class ResultRows {
  private ResultRows() {}

  static void add(Bench bench, MeasuredResult result, Answer answer) {
    List<Map<String, Object>> values = new ArrayList<>();
    List<String> lines = new ArrayList<>();
    String words = Subjects.words(bench, result.subject());
    lines.add(
        words
            + ", "
            + result.plan().title()
            + (result.isWhole()
                ? ""
                : ": "
                    + result.samples().size()
                    + " of "
                    + result.plan().stations().size()
                    + " readings, not judged yet"));
    for (ResultValue value : result.values()) {
      Optional<Judgement> judged =
          result.judgements().stream()
              .filter(judgement -> judgement.value().key().equals(value.key()))
              .findFirst();
      values.add(value(value, judged).all());
      lines.add(
          judged.map(ResultRows::line).orElse(Answer.cells(value.key(), value.text(), "no limit")));
    }
    new OilClearances(bench.job().state())
        .find(result.subject())
        .ifPresent(
            bearing ->
                lines.add(Answer.cells("oil-clearance", bearing.words(), bearing.sentence())));
    answer.row(
        Fields.of("subject", Subjects.code(bench, result.subject()))
            .and("words", words)
            .and("plan", result.plan().key())
            .and("tool", result.tool().name())
            .and("whole", result.isWhole())
            .and("confirmed", result.confirmed())
            .and("values", values),
        lines.toArray(String[]::new));
  }

  private static Fields value(ResultValue value, Optional<Judgement> judged) {
    return Fields.of("key", value.key())
        .and("value", value.value())
        .and("uncertainty", value.standardUncertainty())
        .and("unit", value.unit().symbol())
        .and("limit", judged.map(judgement -> judgement.limit().words()).orElse(""))
        .and("source", judged.map(judgement -> judgement.limit().source()).orElse(""))
        .and("answer", judged.map(ResultRows::word).orElse(""));
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
}
