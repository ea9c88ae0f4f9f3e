package wherefrom.rules.consequence;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import wherefrom.engine.Arrangement;
import wherefrom.engine.Layout;
import wherefrom.engine.LifterType;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;

/**
 * The engine that a change is made on.
 *
 * @param places the places that are tracked
 */
public record Setting(Layout layout, Collection<Place> places) {
  public Setting {
    places = List.copyOf(places);
  }

  boolean isFlat() {
    return layout.lifters() == LifterType.FLAT;
  }

  boolean isV() {
    return layout.arrangement() == Arrangement.V;
  }

  /** The tracked places of these kinds that the change covers in this way. */
  List<Place> listPlaces(Set<PartKind> kinds, Cover cover, Change change) {
    return places.stream()
        .filter(place -> kinds.contains(place.kind()) && cover.covers(change, place, layout))
        .toList();
  }

  /** How many pieces of these kinds the change covers, tracked or not. */
  int count(Set<PartKind> kinds, Cover cover, Change change) {
    return (int)
        Places.of(layout, kinds).stream()
            .filter(place -> cover.covers(change, place, layout))
            .count();
  }
}
