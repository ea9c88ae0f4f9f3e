package wherefrom.drawing;

import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/**
 * What a drawing is asked about.
 *
 * @param tracked the kinds that the job tracks; others are thin
 * @param chosen the one kind that is meant; others are thin then, and not drawn where they are out
 * @param beside places that are drawn beside all others, though their kind is drawn only where it
 *     is chosen
 */
public record Asked(Set<PartKind> tracked, Optional<PartKind> chosen, Set<Place> beside) {
  public Asked {
    tracked = Set.copyOf(tracked);
    beside = Set.copyOf(beside);
  }

  public Asked(Set<PartKind> tracked, Optional<PartKind> chosen) {
    this(tracked, chosen, Set.of());
  }

  /** All that is tracked, no kind more than another. */
  public static Asked of(Set<PartKind> tracked) {
    return new Asked(tracked, Optional.empty());
  }

  public static Asked of(Set<PartKind> tracked, PartKind chosen) {
    return new Asked(tracked, Optional.of(chosen));
  }

  boolean isTracked(PartKind kind) {
    return tracked.contains(kind);
  }

  boolean isChosen(PartKind kind) {
    return chosen.filter(one -> one == kind).isPresent();
  }

  /** Whether a place is drawn whose kind is drawn only where somebody asks for it. */
  boolean isDrawn(Place place) {
    return isChosen(place.kind()) || beside.contains(place);
  }

  /** Whether a kind is one of those that bear marks. */
  public boolean isMeant(PartKind kind) {
    return isTracked(kind) && (chosen.isEmpty() || isChosen(kind));
  }

  /** How a place is drawn: what nobody tracks went with the head that is off. */
  public DrawnAs look(Place place, Function<Place, PartState> states) {
    boolean gone = !isTracked(place.kind()) && EngineStates.isCarrierOff(states, place);
    return gone ? DrawnAs.ABSENT : look(place.kind(), states.apply(place));
  }

  /** How a part of a kind is drawn. */
  public DrawnAs look(PartKind kind, PartState state) {
    if (isMeant(kind)) {
      return state.look();
    }
    return isTracked(kind) && state.look() == DrawnAs.OUT ? DrawnAs.ABSENT : DrawnAs.FAINT;
  }
}
