package wherefrom.job.pages;

import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import wherefrom.engine.Layout;
import wherefrom.inspection.Look;
import wherefrom.job.EngineJob;
import wherefrom.job.PlaceState;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/**
 * The engine as it stands, to be drawn.
 *
 * @param kinds those that the job tracks
 * @param states of every place that is tracked
 * @param renewed the places whose part is a new one
 * @param failed the places whose part failed, whatever was decided of it
 */
public record RecordEngine(
    Layout layout,
    Set<PartKind> kinds,
    Map<Place, PlaceState> states,
    Set<Place> renewed,
    Set<Place> failed) {
  public RecordEngine {
    kinds = Set.copyOf(kinds);
    states = Map.copyOf(states);
    renewed = Set.copyOf(renewed);
    failed = Set.copyOf(failed);
  }

  /** The engine of a job. */
  public static RecordEngine of(EngineJob job) {
    return new RecordEngine(
        job.layout(),
        job.kinds(),
        job.places().stream().collect(Collectors.toMap(Function.identity(), job::state)),
        job.places().stream()
            .filter(place -> job.findSeated(place).filter(Part::fresh).isPresent())
            .collect(Collectors.toSet()),
        job.places().stream().filter(place -> isFailed(job, place)).collect(Collectors.toSet()));
  }

  private static boolean isFailed(EngineJob job, Place place) {
    return job.findSeated(place)
        .or(() -> job.findOwner(place))
        .filter(part -> job.bench().worst(part.item()).look() == Look.FAIL)
        .isPresent();
  }

  /** The same engine of which some places alone are in a state, and all else is in it. */
  public RecordEngine showing(Set<Place> places, PlaceState state) {
    Set<PartKind> meant = places.stream().map(Place::kind).collect(Collectors.toSet());
    return new RecordEngine(
        layout,
        meant,
        places.stream().collect(Collectors.toMap(Function.identity(), place -> state)),
        Set.of(),
        Set.of());
  }

  /** What is so at a place; in the engine where nobody tracks it. */
  public PlaceState state(Place place) {
    return states.getOrDefault(place, PlaceState.IN);
  }
}
