package wherefrom.rules;

import java.util.List;
import java.util.Optional;
import wherefrom.parts.Place;

/**
 * A part that is fitted cannot be fitted twice; scanned again where it is, it is done, unless
 * something stands against it now.
 */
final class AlreadyFittedRule implements VerdictRule {
  @Override
  public Optional<Verdict> judge(JobFacts bench, Attempt attempt) {
    Place place = new Place(attempt.part().kind(), attempt.spot());
    return bench.findFittedAt(attempt.part().item()).map(at -> verdict(bench, attempt, place, at));
  }

  private static Verdict verdict(JobFacts bench, Attempt attempt, Place place, Place fittedAt) {
    if (fittedAt.equals(place)) {
      List<Objection> standing = bench.listAgainst(place);
      if (!standing.isEmpty()) {
        boolean canStay = standing.stream().allMatch(Objection::canBeSettled);
        return new Verdict.FittedBut(attempt.part(), place, standing.get(0).verdict(), canStay);
      }
    }
    return new Verdict.AlreadyFitted(attempt.part(), place, fittedAt);
  }
}
