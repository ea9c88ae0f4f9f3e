package wherefrom.job.takeapart;

import java.util.List;
import wherefrom.job.EngineJob;
import wherefrom.job.PartRecord;
import wherefrom.parts.Over;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;

/** What must be off before a part can come out: all that lies over it. */
public final class OffFirst {
  private final EngineJob state;

  public OffFirst(EngineJob state) {
    this.state = state;
  }

  /** The parts that are still in the engine and in the way of this place, the outermost first. */
  public List<PartRecord> over(Place place) {
    return state.places().stream()
        .filter(other -> Over.isOver(other, place))
        .flatMap(other -> state.findOwner(other).stream())
        .map(part -> state.getPart(part.item()))
        .filter(part -> part.where() == Whereabouts.IN_ENGINE)
        .toList();
  }
}
