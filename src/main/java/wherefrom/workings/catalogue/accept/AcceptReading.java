package wherefrom.workings.catalogue.accept;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import wherefrom.quantity.Measured;
import wherefrom.quantity.Unit;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Inputs;
import wherefrom.workings.MissingInputs;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Note;
import wherefrom.workings.Rounding;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.maths.DualNumber;

/** Accept, undecided or reject, as {@link Acceptance} decides. */
public final class AcceptReading implements Working {
  private static final AmountInput READING =
      AmountInput.length("reading", "The measured value.").signed();
  private static final AmountInput UNCERTAINTY =
      AmountInput.length(
              "uncertainty", "Its standard uncertainty, unless the reading was given with ±.")
          .orZero();
  private static final AmountInput LOWER =
      AmountInput.length("lower", "The lower limit.").signed().optional();
  private static final AmountInput UPPER =
      AmountInput.length("upper", "The upper limit.").signed().optional();
  private static final Source RULE =
      Source.published("ISO 14253-1:2017, from two secondary texts; its clauses not read");

  private static final WorkingCard CARD =
      new WorkingCard(
          "accept",
          "Accept, undecided or reject",
          List.of(READING, UNCERTAINTY, LOWER, UPPER),
          "accept inside the limits by 1.65·u, reject outside them by 1.65·u, else undecided",
          RULE,
          List.of("Undecided: use a better tool, ask a second person or the machine shop."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  /** The ± of the reading serves as its uncertainty. */
  @Override
  public Inputs completed(Inputs inputs) {
    return inputs
        .findMeasured(READING.key())
        .filter(reading -> inputs.find(UNCERTAINTY.key()).isEmpty())
        .flatMap(Measured::standardUncertainty)
        .map(u -> inputs.with(UNCERTAINTY.key(), u))
        .orElse(inputs);
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    OptionalDouble lower = limit(terms, LOWER);
    OptionalDouble upper = limit(terms, UPPER);
    if (lower.isEmpty() && upper.isEmpty()) {
      return new MissingInputs(List.of(LOWER, UPPER));
    }
    if (lower.orElse(Double.NEGATIVE_INFINITY) > upper.orElse(Double.POSITIVE_INFINITY)) {
      return new Nonsense(LOWER.key(), "The lower limit is above the upper one. Swap them.");
    }
    double reading = terms.get(READING).toDouble();
    double u = terms.get(UNCERTAINTY).toDouble();
    return values(terms, new Acceptance(reading, u, lower, upper));
  }

  private static OptionalDouble limit(Terms terms, AmountInput input) {
    return terms
        .find(input)
        .map(d -> OptionalDouble.of(d.toDouble()))
        .orElse(OptionalDouble.empty());
  }

  private static Values values(Terms terms, Acceptance acceptance) {
    Unit unit = terms.lengthUnit();
    DualNumber factor = DualNumber.of(Double.toString(Acceptance.GUARD_FACTOR));
    DualNumber guard = terms.get(UNCERTAINTY).times(factor);
    Values values =
        new Values(List.of(), List.of())
            .andLimit("guard-band", "guard band", unit, guard, Rounding.UP)
            .and(
                "probability",
                "chance to lie within",
                Unit.PERCENT,
                DualNumber.of(acceptance.probability()));
    if (terms.has(LOWER)) {
      DualNumber lower = terms.get(LOWER);
      values =
          values
              .andLimit("accept-from", "accept from", unit, lower.plus(guard), Rounding.UP)
              .andLimit("reject-below", "reject below", unit, lower.minus(guard), Rounding.DOWN);
    }
    if (terms.has(UPPER)) {
      DualNumber upper = terms.get(UPPER);
      values =
          values
              .andLimit("accept-to", "accept up to", unit, upper.minus(guard), Rounding.DOWN)
              .andLimit("reject-above", "reject above", unit, upper.plus(guard), Rounding.UP);
    }
    return values
        .note(conclusion(acceptance.decision()))
        .noteIf(!acceptance.canAccept(), AcceptReading::tooCoarse);
  }

  private static Note conclusion(Acceptance.Ruling decision) {
    String text =
        switch (decision) {
          case ACCEPT -> "Accept: inside the limits, with the uncertainty.";
          case UNDECIDED -> "Undecided: the uncertainty is too large to say. Measure better.";
          case REJECT -> "Reject: outside the limits, with the uncertainty.";
        };
    return Note.conclusion(decision.name().toLowerCase(Locale.ROOT), text, RULE);
  }

  private static Note tooCoarse() {
    return Note.caution("too-coarse", "With this uncertainty no reading could be accepted.", RULE);
  }
}
