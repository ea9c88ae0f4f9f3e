package wherefrom.workings.catalogue.valvetrain;

import java.util.List;
import wherefrom.quantity.Dimension;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.maths.DualNumber;

/** A spring's rate from its loads at two heights. */
public final class SpringRateByLoads implements Working {
  private static final AmountInput TALL = AmountInput.length("height-1", "The taller height.");
  private static final AmountInput SHORT = AmountInput.length("height-2", "The shorter height.");
  private static final AmountInput LIGHT =
      AmountInput.of("load-1", Dimension.FORCE, "The load at the taller height; 0 when free.")
          .orZero();
  private static final AmountInput HEAVY =
      AmountInput.of("load-2", Dimension.FORCE, "The load at the shorter height.");

  private static final WorkingCard CARD =
      new WorkingCard(
          "spring-rate",
          "Spring rate from two loads",
          List.of(TALL, LIGHT, SHORT, HEAVY),
          "rate = (load 2 − load 1) / (height 1 − height 2)",
          Source.workedOut("the definition of a spring rate"),
          List.of("The spring is taken as linear between the two heights."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    DualNumber travel = terms.get(TALL).minus(terms.get(SHORT));
    DualNumber gain = terms.get(HEAVY).minus(terms.get(LIGHT));
    if (!DualNumber.of(0).isLessThan(travel)) {
      return new Nonsense(
          SHORT.key(),
          "height-2 must be shorter than height-1. The spring is pressed from 1 to 2.");
    }
    if (!DualNumber.of(0).isLessThan(gain)) {
      return new Nonsense(
          HEAVY.key(), "load-2 must be more than load-1. A shorter spring pushes harder.");
    }
    return Values.of(
        "rate", "spring rate", terms.unit(Dimension.SPRING_RATE), gain.dividedBy(travel));
  }
}
