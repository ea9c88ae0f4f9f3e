package wherefrom.rules;

import java.util.Optional;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.parts.Part;
import wherefrom.parts.Place;

/** A part that is away, failed, undecided, or waits for a check. */
final class NotClearedRule implements VerdictRule {
  @Override
  public Optional<Verdict> judge(Bench bench, Attempt attempt) {
    Part part = attempt.part();
    return away(bench, attempt)
        .or(() -> decision(bench, attempt))
        .or(
            () ->
                bench
                    .findOpenCheck(part.item())
                    .map(check -> held(attempt, check, "Do the check and record it.")));
  }

  private static Optional<Verdict> away(Bench bench, Attempt attempt) {
    int item = attempt.part().item();
    String where = bench.findAwayTo(item).map(to -> " (" + to + ")").orElse("");
    return switch (bench.whereabouts(item)) {
      case WASHING ->
          Optional.of(
              held(attempt, "it is off for washing" + where, "Check it back from washing first."));
      case AT_SHOP ->
          Optional.of(
              held(
                  attempt,
                  "it is still at the machine shop" + where,
                  "Check it in from the machine shop first."));
      case LOST ->
          Optional.of(
              held(
                  attempt,
                  "it is recorded as missing",
                  "It is in your hand: say that it is found, then scan it again."));
      default -> Optional.empty();
    };
  }

  private static Optional<Verdict> decision(Bench bench, Attempt attempt) {
    int item = attempt.part().item();
    Optional<Decision> decision = bench.findDecision(item);
    if (decision.isPresent()) {
      return switch (decision.get()) {
        case REUSE -> since(bench, attempt);
        case MACHINE ->
            Optional.of(
                held(
                    attempt,
                    "it is to be machined",
                    "Check it in from the machine shop and decide anew."));
        case REPLACE ->
            Optional.of(held(attempt, "it is to be replaced", "Replace it and fit the new part."));
      };
    }
    Look worst = bench.worstLook(item);
    if (worst == Look.FAIL || worst == Look.SUSPECT) {
      String found = worst == Look.FAIL ? "a check failed" : "a check was suspect";
      return Optional.of(
          held(attempt, found + " and nothing is decided", "Decide: reuse, machine or replace."));
    }
    return bench.decisionsWanted() && !attempt.part().fresh()
        ? Optional.of(
            held(attempt, "nothing is decided about it", "Decide: reuse, machine or replace."))
        : Optional.empty();
  }

  /** What nobody knew when it was decided to use the part again. */
  private static Optional<Verdict> since(Bench bench, Attempt attempt) {
    Look worst = bench.worstSinceDecision(attempt.part().item());
    if (worst != Look.FAIL && worst != Look.SUSPECT) {
      return Optional.empty();
    }
    String found = worst == Look.FAIL ? "it failed" : "it was found suspect";
    return Optional.of(
        held(attempt, found + " after the decision to reuse it", "Look at it and decide anew."));
  }

  private static Verdict held(Attempt attempt, String why, String wayOut) {
    Place place = new Place(attempt.part().kind(), attempt.spot());
    return new Verdict.NotCleared(attempt.part(), place, why, wayOut);
  }
}
