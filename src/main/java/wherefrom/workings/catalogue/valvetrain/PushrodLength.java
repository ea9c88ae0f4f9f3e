package wherefrom.workings.catalogue.valvetrain;

import java.util.List;
import wherefrom.quantity.Dimension;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Note;
import wherefrom.workings.Range;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.maths.DualNumber;

/** How the pushrod's length must change: Δr − t·cos θ − Δv/R on a fixed pivot. */
public final class PushrodLength implements Working {
  public static final AmountInput BASE_RADIUS_LOSS =
      AmountInput.length(
              "base-radius-loss",
              "How much smaller the new cam's base circle is, in radius; negative if larger, 0 if"
                  + " the cam stays.")
          .signed();
  public static final AmountInput LOWERING =
      AmountInput.length(
              "lowering",
              "How far the head comes down: head cut, deck cut and thinner gasket together;"
                  + " negative for a thicker gasket.")
          .signed();
  public static final AmountInput TILT =
      AmountInput.of(
              "pushrod-tilt", Dimension.ANGLE, "Between pushrod and cylinder; 0deg if parallel.")
          .in(Range.between("0", "60"));
  public static final AmountInput TIP_RISE =
      AmountInput.length(
              "tip-rise", "How much higher the valve tip stands after seat work; 0 if unchanged.")
          .signed();

  private static final WorkingCard CARD =
      new WorkingCard(
          "pushrod-length",
          "Change of pushrod length",
          List.of(BASE_RADIUS_LOSS, LOWERING, TILT, TIP_RISE, ValveLift.ROCKER_RATIO),
          "change = base radius loss − lowering·cos tilt − tip rise / rocker ratio",
          Source.workedOut("geometry; not published: verify with a checking pushrod"),
          List.of(
              "For rockers on a fixed pivot. On adjustable studs the same shift moves the rocker's"
                  + " geometry, not the preload.",
              "Another lifter height adds its own difference."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    DualNumber change =
        change(
            terms.get(BASE_RADIUS_LOSS),
            terms.get(LOWERING),
            terms.get(TILT),
            terms.get(TIP_RISE).dividedBy(terms.get(ValveLift.ROCKER_RATIO)));
    return Values.of("change", "change of pushrod length", terms.lengthUnit(), change)
        .note(
            Note.remark(
                "checking-pushrod",
                "A negative change means a shorter pushrod. Verify with a checking pushrod before"
                    + " ordering.",
                Source.commonPractice()));
  }

  /** The tip's share is its rise already divided by the rocker ratio. */
  public static DualNumber change(
      DualNumber baseRadiusLoss, DualNumber lowering, DualNumber tilt, DualNumber tipShare) {
    return baseRadiusLoss.minus(lowering.times(tilt.cosineOfDegrees())).minus(tipShare);
  }
}
