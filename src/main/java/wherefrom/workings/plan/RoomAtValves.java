package wherefrom.workings.plan;

import java.util.Optional;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Note;
import wherefrom.workings.Source;
import wherefrom.workings.catalogue.basis.Gap;
import wherefrom.workings.catalogue.valvetrain.PistonToValve;
import wherefrom.workings.catalogue.valvetrain.ValveLift;
import wherefrom.workings.maths.DualNumber;

/** Piston to valve, as far as what was measured with the present parts still says it. */
final class RoomAtValves {
  /** The key of the note that says so, with the gap's key behind it. */
  static final String NOT_KNOWN = "not-known-";

  private final PlanDraft draft;
  private final ClearanceBasis basis;
  private final DualNumber lowering;

  private RoomAtValves(PlanDraft draft, ClearanceBasis basis, DualNumber lowering) {
    this.draft = draft;
    this.basis = basis;
    this.lowering = lowering;
  }

  static void work(PlanDraft draft, ClearanceBasis basis) {
    Optional<DualNumber> lowering = draft.find("lowering");
    if (lowering.isEmpty()) {
      draft.note(PlanNotes.CUT_NOT_KNOWN);
      return;
    }
    if (draft.hasAll("piston to valve", PistonToValve.VALVE_TILT, PistonToValve.CROWN)) {
      RoomAtValves room = new RoomAtValves(draft, basis, lowering.get());
      room.work(Gap.PISTON_TO_INTAKE, PlanInputs.CLEARANCE_INTAKE, "piston to intake valve");
      room.work(Gap.PISTON_TO_EXHAUST, PlanInputs.CLEARANCE_EXHAUST, "piston to exhaust valve");
    }
  }

  private void work(Gap gap, AmountInput clearance, String words) {
    if (!draft.hasAll(words, clearance)) {
      return;
    }
    DualNumber left = left(draft.get(clearance));
    if (!basis.isStale(clearance)) {
      draft.gap(gap, words, left);
    } else if (basis.otherParts().isPresent()) {
      draft.note(notKnown(gap, words, basis.otherParts().get()));
    } else {
      atLeast(gap, words, left);
    }
  }

  private void atLeast(Gap gap, String words, DualNumber left) {
    Optional<DualNumber> gain = findGain();
    if (gain.isEmpty()) {
      draft.note(notKnown(gap, words, ClearanceBasis.OTHER_LIFT));
      return;
    }
    draft.length(ClearanceBasis.atLeast(gap), words + ", at least", left.minus(gain.get()));
  }

  /**
   * The most that the valve lifts farther at any angle: lift is lobe·ratio − lash, so the gain is
   * largest at one end of the lobe. Empty where a figure of one of both lifts misses.
   */
  private Optional<DualNumber> findGain() {
    if (!draft.terms().has(ValveLift.LOBE_LIFT)
        || !draft.terms().has(ValveLift.ROCKER_RATIO)
        || !draft.terms().has(ValveLift.LASH)) {
      return Optional.empty();
    }
    DualNumber lobe = draft.get(ValveLift.LOBE_LIFT);
    DualNumber ratio = draft.get(ValveLift.ROCKER_RATIO);
    DualNumber lash = draft.get(ValveLift.LASH);
    DualNumber ratioBefore = draft.terms().find(PlanInputs.RATIO_BEFORE).orElse(ratio);
    DualNumber lashBefore = draft.terms().find(PlanInputs.LASH_BEFORE).orElse(lash);
    DualNumber atHeel = lashBefore.minus(lash);
    DualNumber atNose = lobe.times(ratio.minus(ratioBefore)).plus(atHeel);
    return Optional.of(DualNumber.of(0).max(atHeel).max(atNose));
  }

  private static Note notKnown(Gap gap, String words, String parts) {
    return Note.lacking(
        NOT_KNOWN + gap.key(),
        words + " is not known with " + parts + ". Measure it again.",
        Source.commonPractice());
  }

  private DualNumber left(DualNumber now) {
    boolean flat = draft.terms().getChoice(PistonToValve.CROWN).equals(PistonToValve.FLAT);
    DualNumber sink = draft.orZero(PistonToValve.SEAT_SINK);
    return PistonToValve.left(now, lowering, draft.get(PistonToValve.VALVE_TILT), flat, sink);
  }
}
