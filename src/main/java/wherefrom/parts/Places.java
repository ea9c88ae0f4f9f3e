package wherefrom.parts;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import wherefrom.engine.Layout;
import wherefrom.engine.LifterType;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;

/** The places of an engine, computed from its layout and the kinds that are tracked. */
public final class Places {
  private Places() {}

  /**
   * Every place, in the order in which the parts come out: stage by stage, within a stage spot by
   * spot, at a spot kind by kind.
   */
  public static List<Place> of(Layout layout, Set<PartKind> kinds) {
    List<Spot> spots = Spots.all(layout);
    List<Place> places = new ArrayList<>();
    for (Spot spot : spots) {
      for (PartKind kind : PartKind.values()) {
        if (kinds.contains(kind) && Place.canLive(kind, spot) && exists(layout, kind)) {
          places.add(new Place(kind, spot));
        }
      }
    }
    places.sort(Comparator.comparingInt(place -> place.kind().stage()));
    return List.copyOf(places);
  }

  private static boolean exists(Layout layout, PartKind kind) {
    return kind != PartKind.MAIN_CAP || layout.mainCaps();
  }

  /** The spots that these places stand at, each once: one place card for each. */
  public static List<Spot> spots(Collection<Place> places) {
    return places.stream().map(Place::spot).distinct().toList();
  }

  /** What of a part binds in this engine: roller lifters must also keep their facing. */
  public static Orientation orientation(Layout layout, PartKind kind) {
    return kind == PartKind.LIFTER && layout.lifters() == LifterType.ROLLER
        ? Orientation.FACING
        : kind.orientation();
  }
}
