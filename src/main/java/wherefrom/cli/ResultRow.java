package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import wherefrom.inspection.measure.Judgement;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OilClearances;
import wherefrom.job.PairClearances;
import wherefrom.workings.ResultValue;

/** A result of readings: each value with its uncertainty, limit and answer. */
record ResultRow(OpenedJob bench, MeasuredResult result) implements Row {
  private static final String OIL = "oil-clearance";

  @Override
  public Map<String, Object> fields() {
    return Json.object(
        "subject", Subjects.code(bench, result.subject()),
        "words", Subjects.words(bench, result.subject()),
        "plan", result.plan().key(),
        "tool", result.tool().name(),
        "whole", result.isWhole(),
        "confirmed", result.confirmed(),
        "values", values(),
        "clearances", clearances().stream().map(Clearance::fields).toList());
  }

  /** A clearance that rests on the result, or wants more readings first. */
  private record Clearance(String key, String words, String sentence, Optional<Judgement> judged) {
    Map<String, Object> fields() {
      return Json.object(
          "key", key,
          "words", words,
          "sentence", sentence,
          "answer", judged.map(ResultRow::word).orElse(""));
    }

    String text() {
      return Answer.cells(key, words, sentence);
    }
  }

  private List<Clearance> clearances() {
    List<Clearance> clearances = new ArrayList<>();
    new OilClearances(bench.state())
        .find(result.subject())
        .map(one -> new Clearance(OIL, one.words(), one.sentence(), one.judgement()))
        .ifPresent(clearances::add);
    new PairClearances(bench.state())
        .find(result.subject()).stream()
            .filter(one -> one.pair().isBy(result.plan()))
            .map(
                one ->
                    new Clearance(one.pair().key(), one.words(), one.sentence(), one.judgement()))
            .forEach(clearances::add);
    return clearances;
  }

  /** Those that were worked out, then those that were not and are judged all the same. */
  private List<Map<String, Object>> values() {
    List<Map<String, Object>> values = new ArrayList<>();
    result.values().forEach(value -> values.add(value(value.key(), value, judgement(value))));
    for (Judgement unfound : result.judgedUnfound()) {
      values.add(value(MeasuredResult.unfoundKey(unfound), unfound.value(), Optional.of(unfound)));
    }
    return values;
  }

  /** A value of the result; without a limit those fields are empty. */
  private static Map<String, Object> value(
      String key, ResultValue value, Optional<Judgement> judged) {
    return Json.object(
        "key", key,
        "value", value.value(),
        "uncertainty", value.standardUncertainty(),
        "unit", value.unit().symbol(),
        "limit", judged.map(judgement -> judgement.limit().words()).orElse(""),
        "source", judged.map(judgement -> judgement.limit().source()).orElse(""),
        "answer", judged.map(ResultRow::word).orElse(""));
  }

  private Optional<Judgement> judgement(ResultValue value) {
    return result.judgements().stream()
        .filter(judgement -> judgement.value().key().equals(value.key()))
        .findFirst();
  }

  @Override
  public String text() {
    String words = Subjects.words(bench, result.subject());
    List<String> lines = new ArrayList<>();
    String unjudged =
        String.format(
            Locale.ROOT,
            ": %d of %d readings%s",
            result.samples().size(),
            result.plan().stations().size(),
            result.isEach() ? "" : ", not judged yet");
    lines.add(words + ", " + result.plan().title() + (result.isWhole() ? "" : unjudged));
    for (ResultValue value : result.values()) {
      String none = Answer.cells(value.key(), value.text(), "no limit");
      lines.add(judgement(value).map(ResultRow::line).orElse(none));
    }
    for (Judgement judged : result.judgedUnfound()) {
      lines.add(judged.value().words() + " " + line(judged));
    }
    clearances().stream().map(Clearance::text).forEach(lines::add);
    return Row.lines(lines);
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
