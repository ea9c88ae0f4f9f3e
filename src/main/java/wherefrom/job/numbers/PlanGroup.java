package wherefrom.job.numbers;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wherefrom.workings.InputSpec;
import wherefrom.workings.catalogue.compression.ChamberForRatio;
import wherefrom.workings.catalogue.compression.CombustionSpace;
import wherefrom.workings.catalogue.compression.HeadCut;
import wherefrom.workings.catalogue.compression.IntakeCorrection;
import wherefrom.workings.catalogue.compression.RatioAfterCut;
import wherefrom.workings.catalogue.valvetrain.CoilBind;
import wherefrom.workings.catalogue.valvetrain.PistonToValve;
import wherefrom.workings.catalogue.valvetrain.PushrodLength;
import wherefrom.workings.catalogue.valvetrain.RetainerToSeal;
import wherefrom.workings.catalogue.valvetrain.ValveLift;
import wherefrom.workings.plan.PlanInputs;

/** The plan's figures in the groups in which they are measured. */
public enum PlanGroup {
  CYLINDER(
      "Cylinder",
      CombustionSpace.BORE,
      CombustionSpace.STROKE,
      CombustionSpace.CHAMBER,
      CombustionSpace.GASKET_BORE,
      CombustionSpace.GASKET_THICKNESS,
      CombustionSpace.DECK,
      CombustionSpace.PISTON_VOLUME,
      HeadCut.OPENING,
      CombustionSpace.CREVICE_HEIGHT,
      CombustionSpace.CREVICE_GAP),
  CUTS(
      "Ratio and cuts",
      ChamberForRatio.TARGET,
      RatioAfterCut.HEAD_CUT,
      RatioAfterCut.DECK_CUT,
      IntakeCorrection.BANK_ANGLE,
      IntakeCorrection.FACE_ANGLE),
  LIFT(
      "Cam and lift",
      ValveLift.LOBE_LIFT,
      ValveLift.ROCKER_RATIO,
      ValveLift.LASH,
      CoilBind.INSTALLED,
      CoilBind.SOLID,
      RetainerToSeal.GAP,
      PlanInputs.SLOT_ROOM),
  VALVES(
      "Pushrod and valves",
      PushrodLength.TILT,
      PushrodLength.BASE_RADIUS_LOSS,
      PushrodLength.TIP_RISE,
      PlanInputs.CLEARANCE_INTAKE,
      PlanInputs.CLEARANCE_EXHAUST,
      PistonToValve.VALVE_TILT,
      PistonToValve.CROWN,
      PistonToValve.SEAT_SINK);

  /** Only a what-if has these: they say what would be done. */
  private static final Set<String> CHANGES =
      Stream.of(
              ChamberForRatio.TARGET,
              RatioAfterCut.HEAD_CUT,
              RatioAfterCut.DECK_CUT,
              PushrodLength.BASE_RADIUS_LOSS,
              PushrodLength.TIP_RISE,
              PistonToValve.SEAT_SINK)
          .map(InputSpec::key)
          .collect(Collectors.toUnmodifiableSet());

  private final String words;

  @SuppressWarnings("ImmutableEnumChecker") // List.of cannot be changed
  private final List<String> keys;

  PlanGroup(String words, InputSpec... inputs) {
    this.words = words;
    this.keys = Stream.of(inputs).map(InputSpec::key).toList();
  }

  public String words() {
    return words;
  }

  /** The inputs of a column: column 0 is how things are now. */
  public List<InputSpec> inputs(int column) {
    return keys.stream()
        .filter(key -> column > 0 || !isChange(key))
        .flatMap(key -> PlanInputs.all().stream().filter(input -> input.key().equals(key)))
        .toList();
  }

  /** Whether the figure says what would be done rather than how something is. */
  public static boolean isChange(String key) {
    return CHANGES.contains(key);
  }
}
