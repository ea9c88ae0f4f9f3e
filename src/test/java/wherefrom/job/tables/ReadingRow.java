package wherefrom.job.tables;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.inspection.measure.Judgement;
import wherefrom.job.MeasuredResult;
import wherefrom.quantity.Amount;
import wherefrom.workings.ResultValue;

/** The row that a result must have in the table of readings. */
final class ReadingRow {
  private ReadingRow() {}

  /**
   * The row's texts.
   *
   * @param about kind, place and words of what was measured
   */
  static List<String> of(MeasuredResult result, ResultValue value, List<String> about) {
    Optional<Judgement> judged =
        result.judgements().stream()
            .filter(one -> one.value().key().equals(value.key()))
            .findFirst();
    String verdict = judged.map(one -> one.decision().name().toLowerCase(Locale.ROOT)).orElse("");
    List<String> row =
        List.of(
            result.plan().key(),
            value.key(),
            digits(value.value()),
            value.unit().symbol(),
            digits(value.standardUncertainty()),
            limit(judged.flatMap(one -> one.limit().lower()), value),
            limit(judged.flatMap(one -> one.limit().upper()), value),
            judged.map(one -> one.limit().source()).orElse(""),
            verdict,
            judged.map(one -> BigDecimal.valueOf(one.probability()).toPlainString()).orElse(""),
            result.tool().name(),
            result.zero().orElse(""),
            result.time().toString().substring(0, 19).replace('T', ' '));
    return Stream.concat(about.stream(), row.stream()).toList();
  }

  /** The row of a clearance, which is worked out of other rows and judged at its worse end. */
  static List<String> ofClearance(
      List<String> about, String plan, String end, ResultValue value, Optional<Judgement> judged) {
    List<String> row =
        List.of(
            plan,
            end,
            digits(value.value()),
            value.unit().symbol(),
            digits(value.standardUncertainty()),
            limit(judged.flatMap(one -> one.limit().lower()), value),
            limit(judged.flatMap(one -> one.limit().upper()), value),
            judged.map(one -> one.limit().source()).orElse(""),
            judged.map(one -> one.decision().name().toLowerCase(Locale.ROOT)).orElse(""),
            "",
            "worked out",
            "",
            "");
    return Stream.concat(about.stream(), row.stream()).toList();
  }

  private static String digits(double value) {
    BigDecimal plain =
        new BigDecimal(Double.toString(value)).round(new MathContext(12)).stripTrailingZeros();
    return plain.scale() < 0 ? plain.setScale(0).toPlainString() : plain.toPlainString();
  }

  private static String limit(Optional<Amount> limit, ResultValue value) {
    return limit.map(one -> one.to(value.unit()).number().toPlainString()).orElse("");
  }
}
