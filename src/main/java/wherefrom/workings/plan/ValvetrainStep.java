package wherefrom.workings.plan;

import java.util.Optional;
import wherefrom.workings.catalogue.basis.Gap;
import wherefrom.workings.catalogue.compression.IntakeCorrection;
import wherefrom.workings.catalogue.valvetrain.CoilBind;
import wherefrom.workings.catalogue.valvetrain.PushrodLength;
import wherefrom.workings.catalogue.valvetrain.RetainerToSeal;
import wherefrom.workings.catalogue.valvetrain.ValveLift;
import wherefrom.workings.maths.DualNumber;

/** From the lowering of the head to intake, pushrod and lift limits. */
final class ValvetrainStep {
  private ValvetrainStep() {}

  static void work(PlanDraft draft) {
    Optional<DualNumber> lowering = draft.find("lowering");
    lowering.ifPresent(known -> intake(draft, known));
    lowering.ifPresent(known -> pushrod(draft, known));
    lift(draft);
  }

  private static void intake(PlanDraft draft, DualNumber lowering) {
    if (!draft.hasAll(
        "intake correction", IntakeCorrection.BANK_ANGLE, IntakeCorrection.FACE_ANGLE)) {
      return;
    }
    DualNumber half = IntakeCorrection.halfOf(draft.get(IntakeCorrection.BANK_ANGLE));
    DualNumber face = draft.get(IntakeCorrection.FACE_ANGLE);
    if (!half.isLessThan(face) || !face.minus(half).isLessThan(DualNumber.of(90))) {
      draft.note(PlanNotes.NO_INTAKE_CORRECTION);
      return;
    }
    draft.length(
        "intake-face", "off each intake face", IntakeCorrection.faceRemoval(lowering, half, face));
    draft.length(
        "intake-rails", "off each end rail", IntakeCorrection.railRemoval(lowering, half, face));
  }

  private static void pushrod(PlanDraft draft, DualNumber lowering) {
    if (!draft.hasAll("pushrod length", PushrodLength.TILT, ValveLift.ROCKER_RATIO)) {
      return;
    }
    DualNumber tip =
        draft.orZero(PushrodLength.TIP_RISE).dividedBy(draft.get(ValveLift.ROCKER_RATIO));
    DualNumber base = draft.orZero(PushrodLength.BASE_RADIUS_LOSS);
    draft.length(
        "pushrod-change",
        "change of pushrod length",
        PushrodLength.change(base, lowering, draft.get(PushrodLength.TILT), tip));
  }

  private static void lift(PlanDraft draft) {
    if (!draft.hasAll("valve lift", ValveLift.LOBE_LIFT, ValveLift.ROCKER_RATIO, ValveLift.LASH)) {
      return;
    }
    DualNumber lift =
        ValveLift.lift(
            draft.get(ValveLift.LOBE_LIFT),
            draft.get(ValveLift.ROCKER_RATIO),
            draft.get(ValveLift.LASH));
    if (!DualNumber.of(0).isLessThan(lift)) {
      draft.note(PlanNotes.NEVER_OPENS);
      return;
    }
    draft.length("lift", "valve lift", lift);
    if (draft.hasAll("coil bind", CoilBind.INSTALLED, CoilBind.SOLID)) {
      DualNumber travel = draft.get(CoilBind.INSTALLED).minus(draft.get(CoilBind.SOLID));
      draft.gap(Gap.COIL_BIND, "left before coil bind", travel.minus(lift));
    }
    if (draft.hasAll("retainer to seal", RetainerToSeal.GAP)) {
      DualNumber gap = draft.get(RetainerToSeal.GAP);
      draft.gap(Gap.RETAINER_TO_SEAL, "retainer to seal", gap.minus(lift));
    }
    if (draft.hasAll("rocker slot", PlanInputs.SLOT_ROOM)) {
      DualNumber room = draft.get(PlanInputs.SLOT_ROOM);
      draft.gap(Gap.ROCKER_SLOT, "left in the rocker's slot", room.minus(lift));
    }
  }
}
