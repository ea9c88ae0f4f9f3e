package wherefrom.rules;

import java.util.Optional;
import wherefrom.parts.Place;

/** A used part that a consequence rule forbids. */
final class MustBeNewRule implements VerdictRule {
  @Override
  public Optional<Verdict> judge(Bench bench, Attempt attempt) {
    Place place = new Place(attempt.part().kind(), attempt.spot());
    return bench
        .findBan(attempt.part().item())
        .map(ban -> new Verdict.MustBeNew(attempt.part(), place, ban));
  }
}
