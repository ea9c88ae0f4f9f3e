package wherefrom.job;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import wherefrom.job.entry.PlaceExcused;
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

  /** What is fitted where now. */
  Map<Place, Part> fitted() {
    Map<Place, Part> fitted = new LinkedHashMap<>();
    assembly.fitted().forEach((place, item) -> fitted.put(place, parts.get(item).part()));
    return fitted;
  }

  /** Why nothing sits in a place, or why what sits there stays. */
  void excuse(PlaceExcused excuse, LoggedEntry logged) {
    Optional<Part> seated = findSeated(excuse.place());
    if (seated.isPresent()) {
      assembly.keep(seated.get().item(), excuse.reason(), logged.sequence());
    } else {
      assembly.leaveEmpty(excuse.place(), excuse.reason());
    }
  }

  private boolean neverCameOut(Part part) {
    return parts.get(part.item()).where() == Whereabouts.IN_ENGINE;
  }
}
