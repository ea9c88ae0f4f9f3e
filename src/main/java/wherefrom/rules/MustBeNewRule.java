package wherefrom.rules;

import java.util.List;
import wherefrom.parts.Part;
import wherefrom.parts.Place;

/** A part that a consequence rule forbids. */
final class MustBeNewRule implements ObjectionRule {
  @Override
  public List<Objection> find(Bench bench, Part part, Place place) {
    return bench.listBans(part.item(), place).stream()
        .map(ban -> new Objection(new Verdict.MustBeNew(part, place, ban), ban.since()))
        .toList();
  }
}
