package wherefrom.job;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Derivation;
import wherefrom.inspection.measure.Judgement;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.Sample;
import wherefrom.inspection.measure.Tool;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Measured;
import wherefrom.quantity.Unit;
import wherefrom.workings.ResultValue;

/**
 * What was measured on one subject by one plan, and what follows.
 *
 * @param sequence the latest entry that it rests on: its readings or a limit
 * @param time when
 * @param tool the tool, as its card stands now
 * @param zero what the tool showed at zero before; empty when nobody checked
 * @param values what was worked out; empty when a station was left out
 * @param judgements one for each value that has a limit
 * @param confirmed whether questioned readings were confirmed
 */
public record MeasuredResult(
    long sequence,
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

  /**
   * Whether what was read stands by itself, though the engine may lack a station or more is to
   * come: each reading is then judged alone.
   */
  public boolean isEach() {
    return plan.shape() == Derivation.EACH && !samples.isEmpty();
  }

  /** Whether every station was read. What is not whole is judged only where {@link #isEach}. */
  public boolean isWhole() {
    return samples.size() == plan.stations().size();
  }

  /** The mean of all stations, with the uncertainty of one: of one tool all are off together. */
  public Measured mean() {
    Unit unit = samples.get(0).unit();
    double mean =
        samples.stream()
            .mapToDouble(sample -> Amount.of(sample.mean(), sample.unit()).in(unit))
            .average()
            .orElseThrow();
    double u =
        samples.stream()
            .map(sample -> sample.measured(tool).standardUncertainty())
            .flatMap(Optional::stream)
            .mapToDouble(each -> each.in(unit))
            .max()
            .orElse(0);
    return Measured.of(Amount.of(mean, unit), Amount.of(u, unit));
  }

  /** The judgements of results that could not be worked out. */
  public List<Judgement> judgedUnfound() {
    return judgements.stream().filter(one -> findValue(one.value().key()).isEmpty()).toList();
  }

  /**
   * What stands for those results in files: its key says that it is no more than the most that the
   * result can be, such as {@code least-at-most}.
   */
  public static String unfoundKey(Judgement unfound) {
    return unfound.value().key() + "-at-most";
  }

  public Optional<ResultValue> findValue(String key) {
    return values.stream().filter(value -> value.key().equals(key)).findFirst();
  }

  /** The size that stands for the part: its value, or the mean of its readings. */
  public Optional<ResultValue> findSize() {
    return findValue("value")
        .or(() -> findValue("mean"))
        .or(() -> findValue("lift"))
        .or(() -> findValue("leak"))
        .or(() -> findValue("least"));
  }
}
