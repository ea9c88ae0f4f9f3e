package wherefrom.job.pages;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import wherefrom.engine.Layout;
import wherefrom.engine.Spot;
import wherefrom.inspection.Look;
import wherefrom.job.EngineJob;
import wherefrom.job.PlaceState;
import wherefrom.job.bags.CarriersAt;
import wherefrom.parts.BigPartAt;
import wherefrom.parts.BigPartKind;
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
 * @param carriers the heads and rocker shafts of the job, and where they are
 */
public record RecordEngine(
    Layout layout,
    Set<PartKind> kinds,
    Map<Place, PlaceState> states,
    Set<Place> renewed,
    Set<Place> failed,
    List<BigPartAt> carriers) {
  public RecordEngine {
    kinds = Set.copyOf(kinds);
    states = Map.copyOf(states);
    renewed = Set.copyOf(renewed);
    failed = Set.copyOf(failed);
    carriers = List.copyOf(carriers);
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
        job.places().stream().filter(place -> isFailed(job, place)).collect(Collectors.toSet()),
        CarriersAt.of(job).all());
  }

  /** The head or rocker shaft that belongs to a spot; empty where the job keeps none. */
  public Optional<BigPartAt> findCarrier(BigPartKind kind, Spot spot) {
    return new CarriersAt(carriers).find(layout, kind, spot);
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
        Set.of(),
        List.of());
  }

  /** What is so at a place; in the engine where nobody tracks it. */
  public PlaceState state(Place place) {
    return states.getOrDefault(place, PlaceState.IN);
  }
}
