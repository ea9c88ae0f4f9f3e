package wherefrom.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;

/** A part that is away, bad, undecided, or waits for a check. */
final class NotClearedRule implements ObjectionRule {
  @Override
  public List<Objection> find(JobFacts bench, Part part, Place place) {
    List<Objection> found = new ArrayList<>();
    away(bench, part, place).ifPresent(found::add);
    decision(bench, part, place).ifPresent(found::add);
    for (OpenCheck check : bench.listOpenChecks(part.item(), place)) {
      found.add(open(part, place, check));
    }
    return found;
  }

  private static Objection open(Part part, Place place, OpenCheck check) {
    return new Objection(
        new Verdict.NotCleared(part, place, Hold.CHECK_OPEN, check.words(), check.key()),
        check.since());
  }

  private static Optional<Objection> away(JobFacts bench, Part part, Place place) {
    int item = part.item();
    String where = bench.findAwayTo(item).map(to -> " (" + to + ")").orElse("");
    return switch (bench.whereabouts(item)) {
      case WASHING ->
          Optional.of(
              held(
                  bench.movedAt(item), part, place, Hold.WASHING, "it is off for washing" + where));
      case AT_SHOP ->
          Optional.of(
              held(
                  bench.movedAt(item),
                  part,
                  place,
                  Hold.AT_SHOP,
                  "it is still at the machine shop" + where));
      case LOST ->
          Optional.of(held(bench.movedAt(item), part, place, Hold.LOST, "it is recorded as lost"));
      default -> Optional.empty();
    };
  }

  private static Optional<Objection> decision(JobFacts bench, Part part, Place place) {
    int item = part.item();
    Optional<Decision> decision = bench.findDecision(item);
    if (decision.isEmpty()) {
      return undecided(bench, part, place);
    }
    return switch (decision.get()) {
      case REUSE -> since(bench, part, place);
      case MACHINE ->
          Optional.of(
              held(bench.decidedAt(item), part, place, Hold.TO_MACHINE, "it is to be machined"));
      case REPLACE ->
          Optional.of(
              held(bench.decidedAt(item), part, place, Hold.TO_REPLACE, "it is to be replaced"));
    };
  }

  private static Optional<Objection> undecided(JobFacts bench, Part part, Place place) {
    Evidence worst = bench.worst(part.item());
    if (worst.isDoubtful()) {
      String found = worst.look() == Look.FAIL ? "a check failed" : "a check was suspect";
      return Optional.of(
          held(worst.since(), part, place, Hold.FOUND_BAD, found + " and nothing is decided"));
    }
    boolean comesBack = !part.fresh() && bench.whereabouts(part.item()) != Whereabouts.IN_ENGINE;
    return bench
        .decisionsAskedSince()
        .filter(asked -> comesBack)
        .map(asked -> held(asked, part, place, Hold.NOT_DECIDED, "nothing is decided about it"));
  }

  /** What nobody knew when it was decided to use the part again. */
  private static Optional<Objection> since(JobFacts bench, Part part, Place place) {
    Evidence worst = bench.worstSinceDecision(part.item());
    if (!worst.isDoubtful()) {
      return Optional.empty();
    }
    String found = worst.look() == Look.FAIL ? "it failed" : "it was found suspect";
    return Optional.of(
        held(
            worst.since(), part, place, Hold.FOUND_BAD, found + " after the decision to reuse it"));
  }

  private static Objection held(long since, Part part, Place place, Hold hold, String why) {
    return new Objection(new Verdict.NotCleared(part, place, hold, why, ""), since);
  }
}
