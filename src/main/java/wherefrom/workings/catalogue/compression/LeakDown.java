package wherefrom.workings.catalogue.compression;

import java.util.List;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.maths.DualNumber;

/** The share of a regulated air pressure that a cylinder does not hold. */
public final class LeakDown implements Working {
  private static final AmountInput SUPPLY =
      AmountInput.of(
          "supply", Dimension.STRESS, "The regulated pressure, before the tester's orifice.");
  private static final AmountInput HELD =
      AmountInput.of("held", Dimension.STRESS, "The pressure that the cylinder holds, behind it.")
          .orZero();

  private static final WorkingCard CARD =
      new WorkingCard(
          "leak-down",
          "Leak-down of a cylinder",
          List.of(SUPPLY, HELD),
          "leak = (supply − held) / supply",
          Source.published(
              "FAA AC 43.13-1B, 1998, 8-14: a loss of more than 25 % of 80 psi is cause to suspect"
                  + " the cylinder"),
          List.of(
              "Piston at top dead center of compression; the crank can turn under the air.",
              "Testers differ in their orifice: compare figures of one tester alone."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    DualNumber supply = terms.get(SUPPLY);
    DualNumber held = terms.get(HELD);
    return supply.isLessThan(held)
        ? new Nonsense(
            HELD.key(), "The cylinder cannot hold more than it is given. Swap the gauges?")
        : Values.of("leak", "leak-down", Unit.PERCENT, supply.minus(held).dividedBy(supply));
  }
}
