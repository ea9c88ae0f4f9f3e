package wherefrom.ui.puttogether;

import java.util.Optional;
import wherefrom.job.EngineJob;
import wherefrom.job.PlaceState;
import wherefrom.job.puttogether.FitOutcome;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.Cue;
import wherefrom.rules.Verdict;
import wherefrom.ui.controls.ScreenAnswer;

/**
 * What was told last. Where that was a fit it is so only as long as the same part sits there, and
 * as much stands against it as did then: another screen can change both.
 *
 * @param right the verdict of a right place; empty where something else was told
 * @param place where a part was fitted; empty where none was
 * @param fitted the part that sat there when this was told
 * @param state what was so at the place then
 */
record ToldFit(
    ScreenAnswer answer,
    Optional<Verdict> right,
    Optional<Place> place,
    Optional<Part> fitted,
    Optional<PlaceState> state) {

  /** Words that speak of no fit. */
  static ToldFit words(ScreenAnswer answer) {
    return new ToldFit(
        answer, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** What is said of a step, with the fit that it was. */
  static ToldFit of(EngineJob job, FitOutcome step, ScreenAnswer answer) {
    Optional<Verdict> right =
        step instanceof FitOutcome.Judged judged && judged.verdict().cue() == Cue.RIGHT
            ? Optional.of(judged.verdict())
            : Optional.empty();
    Optional<Place> place =
        step instanceof FitOutcome.FittedOnPurpose fitted
            ? Optional.of(fitted.place())
            : right.flatMap(verdict -> Marked.of(verdict).place());
    return new ToldFit(answer, right, place, place.flatMap(job::findFitted), place.map(job::state));
  }

  /** Where a part was put in on purpose. */
  Optional<Place> onPurpose() {
    return right.isPresent() ? Optional.empty() : place;
  }

  /** Whether the fit that it tells of, if any, is so yet. */
  boolean isSo(EngineJob job) {
    return place.flatMap(job::findFitted).equals(fitted) && place.map(job::state).equals(state);
  }
}
