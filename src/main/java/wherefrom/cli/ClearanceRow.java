package wherefrom.cli;

import java.util.List;
import java.util.Optional;
import wherefrom.job.BearingClearance;
import wherefrom.workings.ResultValue;

/** The oil clearance of one bearing, or what is still to be measured for it. */
record ClearanceRow(
    String bearing,
    List<String> missing,
    Optional<Double> clearance,
    Optional<Double> uncertainty,
    Optional<String> unit,
    Optional<Double> least,
    Optional<Double> most,
    Optional<String> answer,
    String sentence)
    implements Row {
  static ClearanceRow of(BearingClearance bearing) {
    Optional<ResultValue> value = bearing.clearance();
    return new ClearanceRow(
        bearing.words(),
        bearing.missing(),
        value.map(ResultValue::value),
        value.map(ResultValue::standardUncertainty),
        value.map(known -> known.unit().symbol()),
        bearing.range().map(range -> range.smallest().amount().in(range.smallest().unit())),
        bearing.range().map(range -> range.largest().amount().in(range.smallest().unit())),
        bearing.judgement().map(ResultRow::word),
        bearing.sentence());
  }

  @Override
  public String text() {
    return Answer.cells(bearing, sentence);
  }
}
