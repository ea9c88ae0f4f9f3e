package wherefrom.workings.catalogue.valvetrain;

import java.util.List;
import wherefrom.quantity.Dimension;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Range;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.maths.DualNumber;

/** The lift at the valve. */
public final class ValveLift implements Working {
  public static final AmountInput LOBE_LIFT =
      AmountInput.length("lobe-lift", "Heel to toe of the lobe, minus the base circle's diameter.");
  public static final AmountInput ROCKER_RATIO =
      AmountInput.of("rocker-ratio", Dimension.NUMBER, "Valve side over pushrod side, such as 1.5.")
          .in(Range.above("0", "10"));
  public static final AmountInput LASH =
      AmountInput.length("lash", "The clearance at the valve; 0 for hydraulic lifters.").orZero();

  private static final WorkingCard CARD =
      new WorkingCard(
          "valve-lift",
          "Valve lift",
          List.of(LOBE_LIFT, ROCKER_RATIO, LASH),
          "lift = lobe lift · rocker ratio − lash",
          Source.commonPractice(),
          List.of("Bending of the valvetrain and the rocker's changing ratio are not in it."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    DualNumber lift = lift(terms.get(LOBE_LIFT), terms.get(ROCKER_RATIO), terms.get(LASH));
    if (!DualNumber.of(0).isLessThan(lift)) {
      return new Nonsense(
          LASH.key(), "With a lash of " + terms.text(LASH) + " the valve would never open.");
    }
    return Values.of("lift", "valve lift", terms.lengthUnit(), lift);
  }

  public static DualNumber lift(DualNumber lobeLift, DualNumber ratio, DualNumber lash) {
    return lobeLift.times(ratio).minus(lash);
  }
}
