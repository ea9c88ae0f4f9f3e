package wherefrom.job.takeapart;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import wherefrom.engine.MainSpot;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.engine.Spot;
import wherefrom.job.EngineJob;
import wherefrom.job.PartRecord;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;

/**
 * What must be off before a part can come out: the rocker over a pushrod, the pushrod over a
 * lifter, what holds a spring and its valve, the cap over a shell (common practice, no source).
 */
public final class OffFirst {
  private final EngineJob state;

  public OffFirst(EngineJob state) {
    this.state = state;
  }

  /** The parts that are still in the engine and in the way of this place, the outermost first. */
  public List<PartRecord> over(Place place) {
    return state.places().stream()
        .filter(other -> isOver(other, place))
        .flatMap(other -> state.findOwner(other).stream())
        .map(part -> state.getPart(part.item()))
        .filter(part -> part.where() == Whereabouts.IN_ENGINE)
        .toList();
  }

  private static boolean isOver(Place other, Place place) {
    return over(place.kind()).contains(other.kind()) && isAt(other.spot(), place.spot());
  }

  private static Set<PartKind> over(PartKind kind) {
    return switch (kind) {
      case PUSHROD, KEEPERS -> EnumSet.of(PartKind.ROCKER);
      case LIFTER -> EnumSet.of(PartKind.ROCKER, PartKind.PUSHROD);
      case RETAINER -> EnumSet.of(PartKind.ROCKER, PartKind.KEEPERS);
      case SPRING -> EnumSet.of(PartKind.ROCKER, PartKind.KEEPERS, PartKind.RETAINER);
      case VALVE ->
          EnumSet.of(PartKind.ROCKER, PartKind.KEEPERS, PartKind.RETAINER, PartKind.SPRING);
      case ROD_SHELL, ROD, PISTON -> EnumSet.of(PartKind.ROD_CAP);
      case MAIN_SHELL -> EnumSet.of(PartKind.MAIN_CAP);
      case ROCKER, PIVOT, ROD_CAP, MAIN_CAP, CAM_BEARING -> EnumSet.noneOf(PartKind.class);
    };
  }

  private static boolean isAt(Spot over, Spot spot) {
    return spot.match(
        over::equals,
        bore -> over.equals(new RodSpot(bore.cylinder(), ShellHalf.LOWER)),
        rod -> over.equals(new RodSpot(rod.cylinder(), ShellHalf.LOWER)),
        main -> over.equals(new MainSpot(main.number(), ShellHalf.LOWER)),
        camBearing -> false);
  }
}
