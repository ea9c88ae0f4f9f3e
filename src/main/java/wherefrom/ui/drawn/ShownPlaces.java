package wherefrom.ui.drawn;

import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wherefrom.drawing.PartState;
import wherefrom.parts.Place;

/**
 * What a drawn engine says of its places.
 *
 * @param states what is so at each
 * @param here what this is about: amber, with ring or arrow
 * @param wrong the wrong places of a stop
 * @param right the right places of a stop
 */
record ShownPlaces(
    Function<Place, PartState> states, Set<Place> here, Set<Place> wrong, Set<Place> right) {
  ShownPlaces {
    here = Set.copyOf(here);
    wrong = Set.copyOf(wrong);
    right = Set.copyOf(right);
  }

  /** An engine with all its parts in it, about no place. */
  static ShownPlaces all() {
    return about(place -> PartState.IN, Set.of());
  }

  static ShownPlaces about(Function<Place, PartState> states, Set<Place> here) {
    return new ShownPlaces(states, here, Set.of(), Set.of());
  }

  static ShownPlaces stop(Function<Place, PartState> states, Set<Place> wrong, Set<Place> right) {
    return new ShownPlaces(states, Set.of(), wrong, right);
  }

  /** The places of which it speaks that would not be drawn otherwise. */
  Set<Place> beside() {
    return Stream.of(here, wrong, right)
        .flatMap(Set::stream)
        .filter(place -> OnlyChosen.has(place.kind()))
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Says it on a drawing. */
  void on(DrawnEngine engine) {
    engine.show(states, here);
    engine.rings(wrong, right);
  }
}
