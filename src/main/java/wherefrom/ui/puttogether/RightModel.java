package wherefrom.ui.puttogether;

import java.util.Optional;
import wherefrom.job.EngineJob;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.job.puttogether.ToFit;
import wherefrom.parts.Orientation;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;
import wherefrom.rules.Verdict;

/** A part that has just gone to its right place: what is said beside it until the next scan. */
final class RightModel {
  private final EngineJob state;
  private final PutTogether together;
  private final ToFit missing;
  private final Verdict verdict;
  private final Place place;

  private RightModel(
      EngineJob state, PutTogether together, ToFit missing, Verdict verdict, Place place) {
    this.state = state;
    this.together = together;
    this.missing = missing;
    this.verdict = verdict;
    this.place = place;
  }

  /** Empty where the verdict names no right place. */
  static Optional<RightModel> of(
      EngineJob state, PutTogether together, ToFit missing, Verdict verdict) {
    return Marked.of(verdict)
        .place()
        .map(place -> new RightModel(state, together, missing, verdict, place));
  }

  Place place() {
    return place;
  }

  /** Whether the part was fitted just now and could be in turned. */
  boolean canBeTurned() {
    return verdict instanceof Verdict.RightPlace
        && Places.orientation(state.layout(), place.kind()) != Orientation.NONE;
  }

  /** What a person says who had the part in turned. */
  String turnedWords() {
    return place.kind().orientation() == Orientation.TOP_END
        ? "I held it upside down"
        : "I held it back to front";
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
    long left = missing.places().stream().filter(at -> at.kind() == fitted).count();
    return left == 0
        ? "All " + fitted.plural() + " are fitted."
        : left + " " + (left == 1 ? fitted.word() : fitted.plural()) + " to fit";
  }
}
