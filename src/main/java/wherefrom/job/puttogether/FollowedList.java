package wherefrom.job.puttogether;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.parts.Place;

/**
 * The open places, one after the other, but those whose part would be stopped; what is skipped
 * comes round again after the others.
 */
final class FollowedList {
  private final ToFit missing;
  private final Set<Place> skipped = new HashSet<>();

  FollowedList(ToFit missing) {
    this.missing = missing;
  }

  /** The place that the list names now; empty when nothing is missing whose part can go in. */
  Optional<Place> target() {
    List<Place> open = missing.places();
    List<Place> first = open.stream().filter(place -> !skipped.contains(place)).toList();
    return missing.findNext(first).or(() -> missing.findNext(open));
  }

  void skip() {
    target().ifPresent(skipped::add);
    if (missing
        .findFree(missing.places().stream().filter(it -> !skipped.contains(it)).toList())
        .isEmpty()) {
      skipped.clear();
    }
  }

  /** How many parts are left that would be stopped, where the list names none. */
  int countHeld() {
    return target().isEmpty() ? missing.places().size() : 0;
  }
}
