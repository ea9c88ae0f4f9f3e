package wherefrom.rules;

import java.util.Optional;
import wherefrom.parts.Orientation;
import wherefrom.parts.Place;
import wherefrom.parts.Places;

/** The right part, turned. */
final class WrongEndRule implements VerdictRule {
  @Override
  public Optional<Verdict> judge(JobFacts bench, Attempt attempt) {
    Orientation orientation = Places.orientation(bench.layout(), attempt.part().kind());
    Place place = new Place(attempt.part().kind(), attempt.spot());
    return attempt.turned() && orientation != Orientation.NONE
        ? Optional.of(new Misplaced.WrongEnd(attempt.part(), place, orientation))
        : Optional.empty();
  }
}
