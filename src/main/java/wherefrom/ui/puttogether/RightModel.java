package wherefrom.ui.puttogether;

import wherefrom.job.OpenJob;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.job.puttogether.ToFit;
import wherefrom.parts.Orientation;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;
import wherefrom.rules.Verdict;

/** A part that sits in its right place, and what there is to say beside it. */
final class RightModel {
  private final OpenJob job;
  private final PutTogether together;
  private final Verdict verdict;
  private final Place place;

  RightModel(OpenJob job, PutTogether together, Verdict verdict, Place place) {
    this.job = job;
    this.together = together;
    this.verdict = verdict;
    this.place = place;
  }

  Place place() {
    return place;
  }

  /** Whether the part was just fitted and could be in turned. */
  boolean canBeTurned() {
    return verdict instanceof Verdict.RightPlace right
        && Places.orientation(job.state().layout(), right.part().kind()) != Orientation.NONE;
  }

  /** What a person says who had the part in turned. */
  String turnedWords() {
    boolean ends = place.kind().orientation() == Orientation.TOP_END;
    return ends ? "I held it upside down" : "I held it back to front";
  }

  /** What is left: the list's next place, else how many of the kind. */
  String leftWords() {
    if (together.mode() == PutTogether.Mode.FOLLOW_THE_LIST) {
      return together
          .target()
          .map(next -> "Next: " + next.brief() + " " + next.kind().word())
          .orElse("Nothing is left to fit.");
    }
    PartKind fitted = place.kind();
    long left = new ToFit(job).places().stream().filter(at -> at.kind() == fitted).count();
    return left == 0
        ? "All " + fitted.plural() + " are fitted."
        : left + " " + (left == 1 ? fitted.word() : fitted.plural()) + " to fit";
  }
}
