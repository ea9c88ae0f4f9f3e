package wherefrom.job.pages;

import java.util.Map;
import java.util.Set;
import wherefrom.engine.Layout;
import wherefrom.job.PlaceState;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/**
 * The engine as it stands, to be drawn.
 *
 * @param kinds those that the job tracks
 * @param states of every place that is tracked
 * @param renewed the places whose part is a new one
 */
public record RecordEngine(
    Layout layout, Set<PartKind> kinds, Map<Place, PlaceState> states, Set<Place> renewed) {
  public RecordEngine {
    kinds = Set.copyOf(kinds);
    states = Map.copyOf(states);
    renewed = Set.copyOf(renewed);
  }

  /** What is so at a place; in the engine where nobody tracks it. */
  public PlaceState state(Place place) {
    return states.getOrDefault(place, PlaceState.IN);
  }
}
