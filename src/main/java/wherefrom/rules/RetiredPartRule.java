package wherefrom.rules;

import java.util.Optional;
import wherefrom.parts.Whereabouts;

/** A replaced part never goes back in. */
final class RetiredPartRule implements VerdictRule {
  @Override
  public Optional<Verdict> judge(JobFacts bench, Attempt attempt) {
    if (bench.whereabouts(attempt.part().item()) != Whereabouts.RETIRED) {
      return Optional.empty();
    }
    int item = attempt.part().item();
    return Optional.of(new Verdict.Retired(attempt.part(), bench.findReplacement(item)));
  }
}
