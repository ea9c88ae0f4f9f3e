package wherefrom.job.entry;

import java.util.List;
import wherefrom.engine.LifterType;
import wherefrom.parts.Place;

/**
 * An engine that was in service comes apart again: its next life begins. What sat where then is at
 * home there from now on, under the same numbers and tags.
 *
 * @param why the reason, never empty
 * @param lifters what the engine has been left with
 * @param items the parts that sat in the engine
 * @param places where each of them sat, in the same order
 */
public record EngineReopened(
    String why, LifterType lifters, List<Integer> items, List<Place> places) implements JobEntry {
  public EngineReopened {
    items = List.copyOf(items);
    places = List.copyOf(places);
  }
}
