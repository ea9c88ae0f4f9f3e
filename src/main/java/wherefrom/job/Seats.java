package wherefrom.job;

import java.util.Optional;
import wherefrom.parts.Mates;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;

/** What sits where: fitted, or never taken out; and what belongs beside it. */
final class Seats {
  private final PartsLedger parts;
  private final Assembly assembly;
  private final Pairs pairs;

  Seats(PartsLedger parts, Assembly assembly, Pairs pairs) {
    this.parts = parts;
    this.assembly = assembly;
    this.pairs = pairs;
  }

  Optional<Part> findFitted(Place place) {
    return Optional.ofNullable(assembly.fitted().get(place)).map(item -> parts.get(item).part());
  }

  Optional<Part> findSeated(Place place) {
    return findFitted(place).or(() -> parts.findOwner(place).filter(this::neverCameOut));
  }

  Optional<Place> findSeat(int item) {
    return assembly
        .findFittedAt(item)
        .or(() -> Optional.of(parts.get(item).part()).filter(this::neverCameOut).map(Part::home));
  }

  private boolean neverCameOut(Part part) {
    return parts.get(part.item()).where() == Whereabouts.IN_ENGINE;
  }

  /** The mate of what sits in the place that this one goes with; else the place's owner. */
  Optional<Part> findRightful(Place place) {
    return Mates.findLeader(place)
        .flatMap(this::findSeated)
        .flatMap(leader -> pairs.findMate(place, leader))
        .or(() -> parts.findOwner(place));
  }
}
