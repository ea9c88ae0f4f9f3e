package wherefrom.job.puttogether;

import wherefrom.parts.Place;
import wherefrom.rules.Attempt;
import wherefrom.rules.LeftStanding;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictName;

/** Why a part cannot be fitted on purpose, in a sentence. */
final class NeverOnPurpose {
  private NeverOnPurpose() {}

  /** A stop that overrules no reason; of a part that is in the hand at a spot. */
  static String words(Verdict against, Attempt attempt) {
    String kind = attempt.part().kind().word();
    if (!Place.canLive(attempt.part().kind(), attempt.spot())) {
      return "A "
          + kind
          + " cannot be fitted at "
          + attempt.spot().brief()
          + ", on purpose or not.";
    }
    if (against instanceof LeftStanding) {
      return "Nothing stands against this " + kind + " any more. Scan it again.";
    }
    boolean another =
        against.name() == VerdictName.WRONG_KIND || against.name() == VerdictName.RETIRED;
    return another
        ? "This " + kind + " is never fitted on purpose. Scan the right part."
        : (attempt.part().fresh()
                ? "Another new " + kind + " fits here"
                : "This " + kind + " must be new")
            + ": it is never fitted on purpose.";
  }
}
