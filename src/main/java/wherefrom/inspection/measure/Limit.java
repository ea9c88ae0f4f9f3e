package wherefrom.inspection.measure;

import java.util.Optional;
import java.util.OptionalDouble;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.ResultValue;
import wherefrom.workings.catalogue.accept.Acceptance;
import wherefrom.workings.catalogue.accept.Acceptance.Ruling;

/**
 * A limit that the person typed for the engine on the bench. None comes with the product.
 *
 * @param plan the plan whose result it bounds
 * @param result the result's key, such as {@code out-of-round}
 * @param source manual and page, or where else it comes from; never blank
 */
public record Limit(
    String plan, String result, Optional<Amount> lower, Optional<Amount> upper, String source) {

  /** Judges a result: the measuring uncertainty counts against whoever claims (ISO 14253-1). */
  public Judgement judge(ResultValue value) {
    Unit unit = value.unit();
    Acceptance acceptance =
        new Acceptance(
            value.value(), value.standardUncertainty(), end(lower, unit), end(upper, unit));
    return new Judgement(value, this, acceptance.decision(), acceptance.probability());
  }

  /**
   * Judges a result that could not be worked out by one that is no better: what fails with that
   * fails, and all else is undecided.
   *
   * @param most stands in the words of the judgement; the result is at most as large
   */
  public Judgement judgeAtMost(ResultValue most) {
    boolean fails = lower.isPresent() && judge(most).decision() == Ruling.REJECT;
    return new Judgement(most, this, fails ? Ruling.REJECT : Ruling.UNDECIDED, 0);
  }

  private static OptionalDouble end(Optional<Amount> limit, Unit unit) {
    return limit.map(amount -> OptionalDouble.of(amount.in(unit))).orElse(OptionalDouble.empty());
  }

  /** {@code 0.0010 in to 0.0025 in}, {@code at most 0.002 in}. */
  public String words() {
    if (lower.isPresent() && upper.isPresent()) {
      return lower.get().text() + " to " + upper.get().text();
    }
    return lower
        .map(amount -> "at least " + amount.text())
        .orElseGet(() -> upper.map(amount -> "at most " + amount.text()).orElse("no limit"));
  }
}
