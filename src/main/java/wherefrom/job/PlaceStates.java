package wherefrom.job;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wherefrom.engine.Section;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.Objection;
import wherefrom.rules.Objections;

/** What is so at each place of a job, and what stands against the part that sits there. */
final class PlaceStates {
  /** What a part stands in rightly, or nothing for a reason. */
  private static final Set<PlaceState> FILLED =
      Set.of(PlaceState.IN, PlaceState.FITTED, PlaceState.OTHER_FITTED, PlaceState.EXCUSED);

  private final EngineJob job;
  private final Map<Integer, List<Objection>> against = new HashMap<>();

  PlaceStates(EngineJob job) {
    this.job = job;
  }

  /** To be told of every entry: what stood against a part before may stand no more. */
  void forget() {
    against.clear();
  }

  List<Objection> listAgainst(Place place) {
    return job.findSeated(place)
        .map(
            part ->
                against.computeIfAbsent(
                    part.item(), item -> Objections.ofSeated(job.bench(), part, place)))
        .orElse(List.of());
  }

  boolean isFilled(Place place) {
    return FILLED.contains(of(place));
  }

  /** Those of some sections in which everything is right to this day. */
  Set<String> stillClosed(Collection<String> sections) {
    Set<String> closed = new LinkedHashSet<>(sections);
    Collection<Place> asked = closed.isEmpty() ? List.of() : job.places();
    asked.stream()
        .filter(place -> !isFilled(place))
        .forEach(place -> closed.remove(Section.of(job.layout(), place.spot()).key()));
    return closed;
  }

  PlaceState of(Place place) {
    Optional<Part> here = job.findSeated(place);
    if (here.isPresent()) {
      return seated(here.get(), place);
    }
    if (job.findExcuse(place).isPresent()) {
      return PlaceState.EXCUSED;
    }
    return job.findOwner(place).map(this::away).orElse(PlaceState.OPEN);
  }

  private PlaceState away(Part owner) {
    return switch (job.whereabouts(owner.item())) {
      case OUT -> PlaceState.OUT;
      case WASHING -> PlaceState.WASHING;
      case AT_SHOP -> PlaceState.AT_SHOP;
      case LOST -> PlaceState.MISSING;
      case IN_ENGINE, FITTED, RETIRED -> PlaceState.OPEN;
    };
  }

  private PlaceState seated(Part part, Place place) {
    boolean fitted = job.findFittedAt(part.item()).isPresent();
    if (!listAgainst(place).isEmpty()) {
      return fitted ? PlaceState.FITTED_BUT : PlaceState.IN_BUT;
    }
    if (!fitted) {
      return PlaceState.IN;
    }
    return part.home().equals(place) ? PlaceState.FITTED : PlaceState.OTHER_FITTED;
  }
}
