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

/** Seat load and open load from one known load and the rate. */
public final class SpringLoads implements Working {
  private static final AmountInput RATE =
      AmountInput.of("rate", Dimension.SPRING_RATE, "The spring's rate.");
  private static final AmountInput LOAD =
      AmountInput.of("load", Dimension.FORCE, "A load from the data sheet or the scale.").orZero();
  private static final AmountInput AT =
      AmountInput.length("at-height", "The height at which that load stands.");

  private static final WorkingCard CARD =
      new WorkingCard(
          "spring-loads",
          "Seat load and open load",
          List.of(RATE, LOAD, AT, CoilBind.INSTALLED, CoilBind.LIFT),
          "seat = load + rate·(at height − installed height); open = seat + rate·lift",
          Source.workedOut("the definition of a spring rate"),
          List.of("The spring is taken as linear and must stay short of coil bind."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    DualNumber rate = terms.get(RATE);
    DualNumber pressed = terms.get(AT).minus(terms.get(CoilBind.INSTALLED));
    DualNumber seat = terms.get(LOAD).plus(rate.times(pressed));
    if (seat.isLessThan(DualNumber.of(0))) {
      return new Nonsense(
          CoilBind.INSTALLED.key(),
          "At "
              + terms.text(CoilBind.INSTALLED)
              + " the spring would be loose. Check installed-height and at-height.");
    }
    if (!terms.get(CoilBind.LIFT).isLessThan(terms.get(CoilBind.INSTALLED))) {
      return new Nonsense(
          CoilBind.LIFT.key(),
          "A lift of "
              + terms.text(CoilBind.LIFT)
              + " would press the spring to nothing. Check lift and installed-height.");
    }
    DualNumber open = seat.plus(rate.times(terms.get(CoilBind.LIFT)));
    return Values.of("seat", "seat load", terms.unit(Dimension.FORCE), seat)
        .and("open", "open load", terms.unit(Dimension.FORCE), open);
  }
}
