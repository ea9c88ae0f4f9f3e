package wherefrom.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.job.PairClearance;
import wherefrom.workings.ResultValue;

/** The clearance of a pair at one place, with what it is where readings face each other. */
record PairRow(
    String pair,
    String where,
    List<String> missing,
    Optional<Double> least,
    Optional<Double> most,
    Optional<Double> uncertainty,
    Optional<String> unit,
    List<Map<String, Object>> positions,
    Optional<String> answer,
    String sentence)
    implements Row {

  static PairRow of(PairClearance one) {
    Optional<ResultValue> least = one.range().map(range -> range.smallest());
    return new PairRow(
        one.pair().key(),
        one.words(),
        one.missing(),
        least.map(ResultValue::value),
        one.range().map(range -> range.largest().value()),
        least.map(ResultValue::standardUncertainty),
        least.map(value -> value.unit().symbol()),
        one.facings().stream().map(PairRow::position).toList(),
        one.judgement().map(ResultRow::word),
        one.sentence());
  }

  private static Map<String, Object> position(PairClearance.At at) {
    return Json.object(
        "position", at.facing().key(), "least", at.least().value(), "most", at.most().value());
  }

  @Override
  public String text() {
    return Answer.cells(pair, where, sentence);
  }
}
