package wherefrom.job;

import java.util.Optional;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;

/** What sits where: fitted, or never taken out. */
final class Seats {
  private final PartsLedger parts;
  private final Assembly assembly;

  Seats(PartsLedger parts, Assembly assembly) {
    this.parts = parts;
    this.assembly = assembly;
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
}
