package wherefrom.parts;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import wherefrom.engine.MainSpot;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.engine.Spot;

/**
 * What lies over what: the rocker over its pushrod, the pushrod over its lifter, what holds a
 * spring and its valve, the cap over a shell (common practice, no source). What lies over another
 * part comes out before it and goes in after it.
 */
public final class Over {
  private Over() {}

  /** Whether what lives at one place lies over what lives at another. */
  public static boolean isOver(Place upper, Place lower) {
    return over(lower.kind()).contains(upper.kind()) && isAt(upper.spot(), lower.spot());
  }

  /** The place of the cap that closes over this place; empty where none does. */
  public static Optional<Place> findCap(Place place) {
    return over(place.kind()).stream()
        .filter(kind -> kind == PartKind.ROD_CAP || kind == PartKind.MAIN_CAP)
        .findFirst()
        .map(kind -> new Place(kind, lower(place.spot())));
  }

  /**
   * The place of the part that holds what lives here and so must be at hand for it: a lower shell
   * lies in its cap, the upper shell of a big end in its rod. Empty for what lies in block or head.
   */
  public static Optional<Place> findHolder(Place place) {
    boolean upper = place.spot().findHalf().equals(Optional.of(ShellHalf.UPPER));
    return switch (place.kind()) {
      case ROD_SHELL -> Optional.of(new Place(shellHolder(upper), place.spot()));
      case MAIN_SHELL ->
          upper ? Optional.empty() : Optional.of(new Place(PartKind.MAIN_CAP, place.spot()));
      default -> Optional.empty();
    };
  }

  private static PartKind shellHolder(boolean upper) {
    return upper ? PartKind.ROD : PartKind.ROD_CAP;
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
    return over.equals(lower(spot));
  }

  /** A bearing and a bore are closed on the cap's side; all else lies over its own spot. */
  private static Spot lower(Spot spot) {
    return spot.match(
        valve -> valve,
        bore -> new RodSpot(bore.cylinder(), ShellHalf.LOWER),
        rod -> new RodSpot(rod.cylinder(), ShellHalf.LOWER),
        main -> new MainSpot(main.number(), ShellHalf.LOWER),
        camBearing -> camBearing);
  }
}
