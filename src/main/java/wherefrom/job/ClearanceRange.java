package wherefrom.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.inspection.measure.Judgement;
import wherefrom.inspection.measure.Limit;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;
import wherefrom.workings.WorkingAnswer;

/** The least and the most oil clearance of one bearing over the positions measured. */
public record ClearanceRange(ResultValue smallest, ResultValue largest) {
  private static final Comparator<ResultValue> SIZE =
      Comparator.comparing(each -> each.amount().inBase());

  /** Empty where a position gives no clearance. */
  static Optional<ClearanceRange> of(List<WorkingAnswer> positions) {
    List<ResultValue> values = new ArrayList<>();
    for (WorkingAnswer answer : positions) {
      if (!(answer instanceof Result result)) {
        return Optional.empty();
      }
      values.add(result.getValue("clearance"));
    }
    return ofValues(values);
  }

  /** Empty where there are none. */
  static Optional<ClearanceRange> ofValues(List<ResultValue> values) {
    return values.stream()
        .min(SIZE)
        .map(least -> new ClearanceRange(least, values.stream().max(SIZE).orElseThrow()));
  }

  /** Whether all positions have one clearance. */
  boolean isOne() {
    return SIZE.compare(smallest, largest) == 0;
  }

  /** The worse of both: the one that is further from being accepted. */
  Judgement judge(Limit limit) {
    Comparator<Judgement> worse =
        Comparator.comparing(Judgement::decision)
            .thenComparing(Judgement::probability, Comparator.reverseOrder());
    return Stream.of(named(smallest, "least"), named(largest, "most"))
        .map(limit::judge)
        .max(worse)
        .orElseThrow();
  }

  private ResultValue named(ResultValue value, String end) {
    String words = isOne() ? value.words() : value.words() + " at its " + end;
    return new ResultValue(
        value.key(),
        words,
        value.unit(),
        value.value(),
        value.standardUncertainty(),
        value.shares());
  }

  /** {@code least 0.00200 in ± 0.00013 in, most 0.00290 in ± 0.00013 in}. */
  public String text() {
    return isOne() ? smallest.text() : "least " + smallest.text() + ", most " + largest.text();
  }
}
