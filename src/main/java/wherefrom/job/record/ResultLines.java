package wherefrom.job.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wherefrom.inspection.Look;
import wherefrom.inspection.measure.Judgement;
import wherefrom.inspection.measure.Limit;
import wherefrom.job.MeasuredResult;
import wherefrom.job.pages.LimitBar;
import wherefrom.job.pages.RecordLine;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.ResultValue;

/** A measured result in the record: each limit with a line, and the size. */
final class ResultLines {
  private static final String CLEAN = "clean-up";

  /** What stands for the size where no limit bounds it, the first that there is. */
  private static final List<String> SIZES = List.of("value", "mean", "lift", "smallest", CLEAN);

  private final MeasuredResult result;
  private final String which;
  private final boolean old;

  /**
   * @param which of several that are alike; may be empty
   */
  ResultLines(MeasuredResult result, String which, boolean old) {
    this.result = result;
    this.which = which;
    this.old = old;
  }

  List<RecordLine> list() {
    List<RecordLine> lines = new ArrayList<>();
    if (!result.isWhole()) {
      String some = result.samples().size() + " of " + result.plan().stations().size();
      lines.add(line(result.plan().title() + which, some + " readings"));
      result.judgements().forEach(each -> lines.add(judged(name(each.value()), each, old)));
      return lines;
    }
    for (Judgement judgement : result.judgements()) {
      lines.add(judged(name(judgement.value()), judgement, old));
    }
    size(result).map(value -> figure(name(value), value, old)).ifPresent(lines::add);
    return lines;
  }

  private RecordLine line(String name, String told) {
    return new RecordLine(name, told, Look.NOT_LOOKED, false, old, Optional.empty());
  }

  private String name(ResultValue value) {
    String title = result.plan().title();
    if (value.key().equals(CLEAN)) {
      return value.words();
    }
    boolean same = value.words().equalsIgnoreCase(title) || value.key().equals("mean");
    return (same ? title : title + ", " + value.words().replace(" reading", "")) + which;
  }

  /** The size, where no limit bounds it. */
  static Optional<ResultValue> size(MeasuredResult result) {
    for (String key : SIZES) {
      Optional<ResultValue> found = result.findValue(key);
      if (found.isPresent()) {
        boolean judged =
            result.judgements().stream().anyMatch(one -> one.value().key().equals(key));
        return judged ? Optional.empty() : found;
      }
    }
    return result.judgements().isEmpty() ? result.values().stream().findFirst() : Optional.empty();
  }

  static RecordLine figure(String name, ResultValue value, boolean old) {
    return new RecordLine(
        name, RecordLines.figure(value), Look.NOT_LOOKED, false, old, Optional.empty());
  }

  static RecordLine judged(String name, Judgement judgement, boolean old) {
    ResultValue value = judgement.value();
    Limit limit = judgement.limit();
    Unit unit = value.unit();
    LimitBar bar =
        new LimitBar(
            value.value(),
            value.standardUncertainty(),
            end(limit.lower(), unit),
            end(limit.upper(), unit),
            limit.words(),
            limit.source());
    return new RecordLine(
        name, RecordLines.figure(value), judgement.look(), false, old, Optional.of(bar));
  }

  private static OptionalDouble end(Optional<Amount> limit, Unit unit) {
    return limit.isPresent() ? OptionalDouble.of(limit.get().in(unit)) : OptionalDouble.empty();
  }
}
