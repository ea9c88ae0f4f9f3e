package wherefrom.job.puttogether;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.parts.Place;

/** The open places, one after the other; what is skipped comes round again after the others. */
final class FollowedList {
  private final ToFit missing;
  private final Set<Place> skipped = new HashSet<>();

  FollowedList(ToFit missing) {
    this.missing = missing;
  }

  /** The place that the list names now; empty when nothing is missing. */
  Optional<Place> target() {
    List<Place> open = missing.places();
    return open.stream()
        .filter(place -> !skipped.contains(place))
        .findFirst()
        .or(() -> open.stream().findFirst());
  }

  void skip() {
    target().ifPresent(skipped::add);
    if (skipped.containsAll(missing.places())) {
      skipped.clear();
    }
  }
}
