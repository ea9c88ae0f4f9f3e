package wherefrom.workings.plan;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.quantity.Measured;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Inputs;
import wherefrom.workings.catalogue.basis.Gap;
import wherefrom.workings.catalogue.compression.CombustionSpace;
import wherefrom.workings.catalogue.valvetrain.PushrodLength;
import wherefrom.workings.catalogue.valvetrain.ValveLift;

/**
 * What the room between piston and valve was measured with. It says nothing of another cam, other
 * pistons or another crank. Of another rocker ratio or lash it says the least that is left, as at
 * no angle the valve then lifts farther by more than at its largest gain.
 *
 * @param stale keys of the clearances that were measured with other parts than the column has
 * @param otherParts what else is there now, in words; empty where only ratio or lash are
 */
record ClearanceBasis(Set<String> stale, Optional<String> otherParts) {
  /** What is there now where only ratio or lash are others, and not all of them are known. */
  static final String OTHER_LIFT = "another lift";

  static final String AT_LEAST = "-at-least";

  private static final List<AmountInput> CAM =
      List.of(ValveLift.LOBE_LIFT, PushrodLength.BASE_RADIUS_LOSS);
  private static final List<AmountInput> PISTONS =
      List.of(
          CombustionSpace.BORE,
          CombustionSpace.STROKE,
          CombustionSpace.DECK,
          CombustionSpace.PISTON_VOLUME);
  private static final List<AmountInput> ROCKERS = List.of(ValveLift.ROCKER_RATIO, ValveLift.LASH);
  private static final List<AmountInput> CLEARANCES =
      List.of(PlanInputs.CLEARANCE_INTAKE, PlanInputs.CLEARANCE_EXHAUST);

  /** The clearances are those of the parts that the column has. */
  static final ClearanceBasis SAME_PARTS = new ClearanceBasis(Set.of(), Optional.empty());

  ClearanceBasis {
    stale = Set.copyOf(stale);
  }

  /** A clearance that the what-if states itself was measured with its parts. */
  static ClearanceBasis of(Inputs now, WhatIf whatIf) {
    Inputs then = now.withAll(whatIf.changes());
    boolean cam = differs(now, then, CAM);
    boolean pistons = differs(now, then, PISTONS);
    if (!cam && !pistons && !differs(now, then, ROCKERS)) {
      return SAME_PARTS;
    }
    Set<String> stale = new HashSet<>();
    for (AmountInput clearance : CLEARANCES) {
      if (whatIf.changes().find(clearance.key()).isEmpty()) {
        stale.add(clearance.key());
      }
    }
    if (cam || pistons) {
      String words = cam ? "another cam" : "other pistons or another crank";
      return new ClearanceBasis(stale, Optional.of(words));
    }
    boolean known = ROCKERS.stream().allMatch(input -> now.find(input.key()).isPresent());
    return new ClearanceBasis(stale, known ? Optional.empty() : Optional.of(OTHER_LIFT));
  }

  boolean isStale(AmountInput clearance) {
    return stale.contains(clearance.key());
  }

  /** The key of the least that is left of a gap where no more is known. */
  static String atLeast(Gap gap) {
    return gap.key() + AT_LEAST;
  }

  private static boolean differs(Inputs now, Inputs then, List<AmountInput> inputs) {
    return inputs.stream().anyMatch(input -> size(now, input).compareTo(size(then, input)) != 0);
  }

  /** Absent counts as zero. */
  private static BigDecimal size(Inputs inputs, AmountInput input) {
    return inputs
        .findMeasured(input.key())
        .map(Measured::value)
        .map(value -> value.inBase())
        .orElse(BigDecimal.ZERO);
  }
}
