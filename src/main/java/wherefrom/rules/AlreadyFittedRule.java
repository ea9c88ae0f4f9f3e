package wherefrom.rules;

import java.util.Optional;
import wherefrom.parts.Place;

/** A part that is fitted cannot be fitted twice; scanned again where it is, it is done. */
final class AlreadyFittedRule implements VerdictRule {
  @Override
  public Optional<Verdict> judge(Bench bench, Attempt attempt) {
    Place place = new Place(attempt.part().kind(), attempt.spot());
    return bench
        .findFittedAt(attempt.part().item())
        .map(fittedAt -> new Verdict.AlreadyFitted(attempt.part(), place, fittedAt));
  }
}
