package wherefrom.job.puttogether;

import java.util.Optional;
import wherefrom.engine.Spot;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/**
 * The kind of part that is meant at a spot: the list names it, or its place was tapped.
 *
 * @param kind empty where a place card was scanned, which stands for every kind at its spot
 * @param pointed whether it was tapped
 */
record MeantKind(Optional<PartKind> kind, boolean pointed) {
  /** Any kind that lives there. */
  static final MeantKind ANY = new MeantKind(Optional.empty(), false);

  /**
   * What is meant at the spot of a part in the hand.
   *
   * @param pointed the place that was tapped last; empty where a card was scanned since
   * @param listed the place that the list names
   */
  static MeantKind at(Optional<Spot> spot, Optional<Place> pointed, Optional<Place> listed) {
    return pointed
        .or(() -> listed)
        .filter(place -> spot.equals(Optional.of(place.spot())))
        .map(place -> new MeantKind(Optional.of(place.kind()), pointed.isPresent()))
        .orElse(ANY);
  }
}
