package wherefrom.rules;

import java.util.Comparator;
import java.util.List;
import wherefrom.parts.Part;
import wherefrom.parts.Place;

/** A part that a consequence rule forbids: for good, or until work is done on it. */
final class MustBeNewRule implements ObjectionRule {
  @Override
  public List<Objection> find(JobFacts bench, Part part, Place place) {
    List<Ban> bans = bench.listBans(part.item(), place);
    if (bans.isEmpty()) {
      return List.of();
    }
    // What must be new is not helped by work that is open: it is said first.
    return bans.stream()
        .sorted(Comparator.comparing(ban -> !ban.check().isEmpty()))
        .map(ban -> new Objection(verdict(part, place, ban), ban.since()))
        .toList();
  }

  private static StandsAgainst verdict(Part part, Place place, Ban ban) {
    if (ban.check().isEmpty()) {
      return new Verdict.MustBeNew(part, place, ban);
    }
    return new Verdict.NotCleared(part, place, Hold.WORK_OPEN, ban.words(), ban.check());
  }
}
