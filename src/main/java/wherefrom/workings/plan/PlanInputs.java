package wherefrom.workings.plan;

import static wherefrom.workings.catalogue.compression.CombustionSpace.BORE;
import static wherefrom.workings.catalogue.compression.CombustionSpace.CHAMBER;
import static wherefrom.workings.catalogue.compression.CombustionSpace.CREVICE_GAP;
import static wherefrom.workings.catalogue.compression.CombustionSpace.CREVICE_HEIGHT;
import static wherefrom.workings.catalogue.compression.CombustionSpace.DECK;
import static wherefrom.workings.catalogue.compression.CombustionSpace.GASKET_BORE;
import static wherefrom.workings.catalogue.compression.CombustionSpace.GASKET_THICKNESS;
import static wherefrom.workings.catalogue.compression.CombustionSpace.PISTON_VOLUME;
import static wherefrom.workings.catalogue.compression.CombustionSpace.STROKE;

import java.util.ArrayList;
import java.util.List;
import wherefrom.quantity.Dimension;
import wherefrom.workings.AmountInput;
import wherefrom.workings.ChoiceInput;
import wherefrom.workings.InputSpec;
import wherefrom.workings.catalogue.compression.ChamberForRatio;
import wherefrom.workings.catalogue.compression.HeadCut;
import wherefrom.workings.catalogue.compression.IntakeCorrection;
import wherefrom.workings.catalogue.compression.RatioAfterCut;
import wherefrom.workings.catalogue.valvetrain.CoilBind;
import wherefrom.workings.catalogue.valvetrain.PistonToValve;
import wherefrom.workings.catalogue.valvetrain.PushrodLength;
import wherefrom.workings.catalogue.valvetrain.RetainerToSeal;
import wherefrom.workings.catalogue.valvetrain.ValveLift;

/** Everything a plan can take; nothing is required, and what lacks an input is not worked out. */
public final class PlanInputs {
  /** Set by the plan itself when a what-if has another gasket. */
  public static final AmountInput GASKET_BEFORE =
      AmountInput.length("gasket-before", "The thickness of the gasket used up to now.").orZero();

  /** Set by the plan itself when a what-if has another rocker ratio. */
  public static final AmountInput RATIO_BEFORE =
      AmountInput.of("rocker-ratio-before", Dimension.NUMBER, "The rocker ratio used up to now.");

  /** Set by the plan itself when a what-if has another lash. */
  public static final AmountInput LASH_BEFORE =
      AmountInput.length("lash-before", "The lash used up to now.").orZero();

  public static final AmountInput SLOT_ROOM =
      AmountInput.length(
          "slot-room", "The valve lift at which the rocker's slot would touch its stud or pivot.");
  public static final AmountInput CLEARANCE_INTAKE =
      AmountInput.length(
          "clearance-intake", "Piston to intake valve, measured with the present parts.");
  public static final AmountInput CLEARANCE_EXHAUST =
      AmountInput.length(
          "clearance-exhaust", "Piston to exhaust valve, measured with the present parts.");

  private static final List<AmountInput> FIGURES =
      List.of(
          BORE,
          STROKE,
          CHAMBER,
          GASKET_BORE,
          GASKET_THICKNESS,
          GASKET_BEFORE,
          DECK,
          PISTON_VOLUME,
          CREVICE_HEIGHT,
          CREVICE_GAP,
          ChamberForRatio.TARGET,
          HeadCut.OPENING,
          RatioAfterCut.HEAD_CUT,
          RatioAfterCut.DECK_CUT,
          IntakeCorrection.BANK_ANGLE,
          IntakeCorrection.FACE_ANGLE,
          ValveLift.LOBE_LIFT,
          ValveLift.ROCKER_RATIO,
          ValveLift.LASH,
          RATIO_BEFORE,
          LASH_BEFORE,
          CoilBind.INSTALLED,
          CoilBind.SOLID,
          RetainerToSeal.GAP,
          SLOT_ROOM,
          PushrodLength.BASE_RADIUS_LOSS,
          PushrodLength.TILT,
          PushrodLength.TIP_RISE,
          CLEARANCE_INTAKE,
          CLEARANCE_EXHAUST,
          PistonToValve.VALVE_TILT,
          PistonToValve.SEAT_SINK);

  private PlanInputs() {}

  /** All inputs, each optional. */
  public static List<InputSpec> all() {
    List<InputSpec> inputs = new ArrayList<>();
    FIGURES.forEach(input -> inputs.add(input.optional()));
    ChoiceInput crown = PistonToValve.CROWN;
    inputs.add(
        new ChoiceInput(crown.key(), crown.words(), crown.meaning(), false, crown.choices()));
    return List.copyOf(inputs);
  }
}
