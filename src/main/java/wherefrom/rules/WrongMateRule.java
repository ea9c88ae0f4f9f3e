package wherefrom.rules;

import java.util.List;
import java.util.Optional;
import wherefrom.parts.Mates;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;

/**
 * A part whose mate is another individual: a rod's cap on another rod, a shell that ran in another
 * cap. What was machined or worn in together stays together, or goes together.
 */
final class WrongMateRule implements ObjectionRule {
  @Override
  public List<Objection> find(JobFacts bench, Part part, Place place) {
    return bench
        .findLeader(part.item())
        .flatMap(own -> find(bench, part, place, own))
        .map(List::of)
        .orElse(List.of());
  }

  private static Optional<Objection> find(JobFacts bench, Part part, Place place, Part own) {
    if (bench.whereabouts(own.item()) == Whereabouts.RETIRED) {
      return Optional.of(objection(bench, part, place, own, Optional.empty()));
    }
    return Mates.findLeader(place)
        .flatMap(bench::findSeated)
        .filter(seated -> seated.item() != own.item())
        .map(seated -> objection(bench, part, place, own, Optional.of(seated)));
  }

  private static Objection objection(
      JobFacts bench, Part part, Place place, Part own, Optional<Part> seated) {
    Optional<Part> right = bench.findRightful(place).filter(other -> other.item() != part.item());
    long since = Belonging.movedAway(bench, seated.orElse(own));
    return new Objection(new Misplaced.WrongMate(part, place, own, seated, right), since);
  }
}
