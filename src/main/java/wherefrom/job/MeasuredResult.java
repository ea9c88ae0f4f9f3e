package wherefrom.job;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Judgement;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.Sample;
import wherefrom.inspection.measure.Tool;
import wherefrom.workings.ResultValue;

/**
 * What was measured on one subject by one plan, and what follows.
 *
 * @param time when
 * @param tool the tool, as its card stands now
 * @param zero what the tool showed at zero before; empty when nobody checked
 * @param values what was worked out; empty when a station was left out
 * @param judgements one for each value that has a limit
 * @param confirmed whether questioned readings were confirmed
 */
public record MeasuredResult(
    Instant time,
    Subject subject,
    ReadingPlan plan,
    List<Sample> samples,
    Tool tool,
    Optional<String> zero,
    List<ResultValue> values,
    List<Judgement> judgements,
    boolean confirmed,
    String note) {

  public MeasuredResult {
    samples = List.copyOf(samples);
    values = List.copyOf(values);
    judgements = List.copyOf(judgements);
  }

  /** The worst of the judgements; not looked, where there is no limit. */
  public Look worst() {
    return judgements.stream().map(Judgement::look).max(Look::compareTo).orElse(Look.NOT_LOOKED);
  }

  public Optional<ResultValue> findValue(String key) {
    return values.stream().filter(value -> value.key().equals(key)).findFirst();
  }

  /** The size that stands for the part: its value, or the mean of its readings. */
  public Optional<ResultValue> findSize() {
    return findValue("value").or(() -> findValue("mean")).or(() -> findValue("lift"));
  }
}
