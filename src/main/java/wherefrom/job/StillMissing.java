package wherefrom.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import wherefrom.engine.Section;
import wherefrom.job.entry.PlaceExcused;
import wherefrom.job.entry.SectionClosed;
import wherefrom.parts.Place;

/** The places that are still open, and the closing of sections. */
public final class StillMissing {
  /** A place that a part stands in, or that was left empty for a reason, is not missing. */
  private static final Set<PlaceState> FILLED =
      Set.of(PlaceState.IN, PlaceState.FITTED, PlaceState.OTHER_FITTED, PlaceState.EXCUSED);

  private final OpenJob job;

  public StillMissing(OpenJob job) {
    this.job = job;
  }

  /** Every open place, in the order of putting together: bottom end first. */
  public List<Place> places() {
    EngineJob state = job.state();
    return inOrder(state.places().stream().filter(this::isOpen).toList());
  }

  public List<Place> places(Section section) {
    return places().stream()
        .filter(place -> Section.of(job.state().layout(), place.spot()).equals(section))
        .toList();
  }

  /** Whether every place is filled, or left empty for a reason. */
  public static boolean isNothing(EngineJob state) {
    return state.places().stream().map(state::state).allMatch(FILLED::contains);
  }

  private boolean isOpen(Place place) {
    return !FILLED.contains(job.state().state(place));
  }

  /**
   * Last out, first in: the stages of taking apart backwards, places within a stage as they stand.
   */
  public static List<Place> inOrder(List<Place> places) {
    List<Place> ordered = new ArrayList<>(places);
    ordered.sort(Comparator.comparingInt(place -> -place.kind().stage()));
    return ordered;
  }

  /** The sections that hold at least one tracked place. */
  public List<Section> sections() {
    EngineJob state = job.state();
    return Section.all(state.layout()).stream()
        .filter(
            section ->
                state.places().stream()
                    .anyMatch(place -> Section.of(state.layout(), place.spot()).equals(section)))
        .toList();
  }

  /** Leaves a place empty, for a reason that stands in the build record. */
  public void excuse(Place place, String reason) {
    if (reason.isBlank()) {
      throw new IllegalArgumentException("Say why the place stays empty.");
    }
    job.record(new PlaceExcused(place, reason.strip()));
  }

  /** Closes a section; false, and nothing is logged, while a place in it is open. */
  public boolean close(Section section) {
    if (!places(section).isEmpty()) {
      return false;
    }
    job.record(new SectionClosed(section.key()));
    return true;
  }
}
