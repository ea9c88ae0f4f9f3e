package wherefrom.rules;

import java.util.Optional;
import wherefrom.parts.Whereabouts;
import wherefrom.text.Words;

/** A replaced part never goes back in. */
final class RetiredPartRule implements VerdictRule {
  @Override
  public Optional<Verdict> judge(Bench bench, Attempt attempt) {
    if (bench.whereabouts(attempt.part().item()) != Whereabouts.RETIRED) {
      return Optional.empty();
    }
    String wayOut =
        bench
            .findReplacement(attempt.part().item())
            .map(fresh -> "Fit the part in use, number " + Words.number(fresh.item()) + ".")
            .orElse("Put it away from the bench.");
    return Optional.of(
        new Verdict.Retired(attempt.part(), "this part was replaced and is retired.", wayOut));
  }
}
