package wherefrom.workings.plan;

import wherefrom.workings.Note;
import wherefrom.workings.Source;

/** Sentences a plan may carry. */
final class PlanNotes {
  static final Note NO_INTAKE_CORRECTION =
      Note.remark(
          "no-intake-correction",
          "The intake correction does not fit these bank and face angles.",
          Source.workedOut("geometry"));

  static final Note CUT_NOT_KNOWN =
      Note.lacking(
          "needs-the-cut",
          "Intake, pushrod length and piston to valve are not worked out. The cut for"
              + " the wanted ratio is not known yet.",
          Source.workedOut("the inputs given"));

  static final Note CLEARANCE_OF_OTHER_CAM =
      Note.caution(
          "clearance-of-other-cam",
          "Piston to valve was measured with the present cam and rockers. With another"
              + " lift, base circle or ratio, measure again.",
          Source.commonPractice());

  static final Note NEVER_OPENS =
      Note.caution(
          "never-opens",
          "With this lash the valve would never open. Check lobe lift, ratio and lash.",
          Source.workedOut("the three figures"));

  static final Note RATIO_OF_THE_CUT =
      Note.remark(
          "ratio-of-the-cut",
          "The ± of the ratio holds for a cut of exactly this figure. It comes from the"
              + " other readings.",
          Source.workedOut("the inputs given"));

  static final Note CHECKING_PUSHROD =
      Note.remark(
          "checking-pushrod",
          "Verify the pushrod's length with a checking pushrod before ordering.",
          Source.commonPractice());

  private PlanNotes() {}
}
