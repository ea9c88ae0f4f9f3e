package wherefrom.workings.catalogue.valvetrain;

import java.util.List;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.workings.AmountInput;
import wherefrom.workings.ChoiceInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.Range;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.catalogue.basis.Gap;
import wherefrom.workings.maths.DualNumber;

/** What a cut leaves between piston and valve, along the valve. */
public final class PistonToValve implements Working {
  public static final AmountInput CLEARANCE =
      AmountInput.length(
          "clearance-now", "Piston to valve as measured with clay or dial before the change.");
  public static final AmountInput VALVE_TILT =
      AmountInput.of("valve-tilt", Dimension.ANGLE, "Between valve and cylinder.")
          .in(Range.between("0", "60"));

  /** The choice of a crown without dome or dish. */
  public static final String FLAT = "flat";

  private static final String INTAKE = "intake";

  public static final ChoiceInput CROWN =
      ChoiceInput.of(
          "crown",
          "flat where the valve meets the piston's flat crown, pocket where it meets a relief"
              + " parallel to the valve head.",
          FLAT,
          "pocket");
  public static final ChoiceInput SIDE =
      ChoiceInput.of("side", "Which valve: intake or exhaust.", INTAKE, "exhaust");
  public static final AmountInput SEAT_SINK =
      AmountInput.length(
              "seat-sink",
              "How much deeper the valve sits after seat work, measured along its stem, as"
                  + " with the rise of its tip; 0 if unchanged.")
          .orZero();

  private static final WorkingCard CARD =
      new WorkingCard(
          "piston-to-valve",
          "Piston to valve after a cut",
          List.of(CLEARANCE, PushrodLength.LOWERING, VALVE_TILT, CROWN, SEAT_SINK, SIDE),
          "flat: left = clearance − lowering / cos tilt + sink;"
              + " pocket: left = clearance − lowering·cos tilt + sink",
          Source.workedOut("geometry; no published example was found"),
          List.of(
              "For the same cam, cam timing and rocker ratio. After changing one of them,"
                  + " measure again.",
              "All gaps are along the valve's axis. Divide a clay print measured square to"
                  + " a flat crown by cos tilt first."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    boolean flat = terms.getChoice(CROWN).equals(FLAT);
    DualNumber left =
        left(
            terms.get(CLEARANCE),
            terms.get(PushrodLength.LOWERING),
            terms.get(VALVE_TILT),
            flat,
            terms.get(SEAT_SINK));
    Gap gap = terms.getChoice(SIDE).equals(INTAKE) ? Gap.PISTON_TO_INTAKE : Gap.PISTON_TO_EXHAUST;
    Unit unit = terms.lengthUnit();
    return gap.withNote(Values.of("clearance", "piston to valve", unit, left), left, unit);
  }

  /**
   * The clearance along the valve after the head came down. A sunk seat moves the valve along its
   * own axis, so the whole of it is gained, on a flat crown as in a pocket.
   */
  public static DualNumber left(
      DualNumber now, DualNumber lowering, DualNumber tilt, boolean flat, DualNumber sink) {
    DualNumber cosine = tilt.cosineOfDegrees();
    DualNumber lost = flat ? lowering.dividedBy(cosine) : lowering.times(cosine);
    return now.minus(lost).plus(sink);
  }
}
