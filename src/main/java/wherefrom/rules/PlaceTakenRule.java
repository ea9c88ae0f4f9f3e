package wherefrom.rules;

import java.util.Optional;
import wherefrom.parts.Place;

/** Two parts cannot sit in one place. */
final class PlaceTakenRule implements VerdictRule {
  @Override
  public Optional<Verdict> judge(JobFacts bench, Attempt attempt) {
    Place place = new Place(attempt.part().kind(), attempt.spot());
    return bench
        .findFitted(place)
        .map(fitted -> new Verdict.PlaceTaken(attempt.part(), place, fitted));
  }
}
