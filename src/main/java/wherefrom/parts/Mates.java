package wherefrom.parts;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.engine.MainSpot;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.engine.Spot;

/**
 * What a part wears in to at its place. Rocker, pushrod and lifter, and valve with guide and seat,
 * after TM 5-4210-220-34 and TM 5-3810-289-34; the rest is common practice, no source.
 *
 * @param kinds the parts that run against it or are clamped together with it
 * @param surfaces what it runs in that is no part of its own
 */
public record Mates(Set<PartKind> kinds, List<String> surfaces) {
  public Mates {
    kinds = Set.copyOf(kinds);
    surfaces = List.copyOf(surfaces);
  }

  /** The mates of a kind of part. */
  public static Mates of(PartKind kind) {
    return switch (kind) {
      case ROCKER -> with(EnumSet.of(PartKind.PIVOT, PartKind.PUSHROD, PartKind.VALVE));
      case PIVOT -> with(EnumSet.of(PartKind.ROCKER));
      case PUSHROD -> with(EnumSet.of(PartKind.ROCKER, PartKind.LIFTER));
      case LIFTER -> with(EnumSet.of(PartKind.PUSHROD), "cam lobe", "lifter bore");
      case KEEPERS -> with(EnumSet.of(PartKind.RETAINER, PartKind.VALVE));
      case RETAINER -> with(EnumSet.of(PartKind.KEEPERS, PartKind.SPRING));
      case SPRING -> with(EnumSet.of(PartKind.RETAINER), "spring seat");
      case VALVE ->
          with(EnumSet.of(PartKind.ROCKER, PartKind.KEEPERS), "valve guide", "valve seat");
      case ROD_CAP -> with(EnumSet.of(PartKind.ROD, PartKind.ROD_SHELL));
      case ROD_SHELL ->
          with(EnumSet.of(PartKind.ROD_SHELL, PartKind.ROD, PartKind.ROD_CAP), "rod journal");
      case ROD -> with(EnumSet.of(PartKind.ROD_CAP, PartKind.ROD_SHELL, PartKind.PISTON));
      case PISTON -> with(EnumSet.of(PartKind.ROD), "cylinder bore");
      case MAIN_CAP -> with(EnumSet.of(PartKind.MAIN_SHELL), "block");
      case MAIN_SHELL ->
          with(EnumSet.of(PartKind.MAIN_SHELL, PartKind.MAIN_CAP), "main journal", "block");
      case CAM_BEARING -> with(EnumSet.noneOf(PartKind.class), "cam journal", "block");
    };
  }

  private static Mates with(Set<PartKind> kinds, String... surfaces) {
    return new Mates(kinds, List.of(surfaces));
  }

  /** Whether what lives at one place is worn in to what lives at another. */
  public static boolean areMates(Place one, Place other) {
    return !one.equals(other)
        && of(one.kind()).kinds().contains(other.kind())
        && isSame(one.spot(), other.spot());
  }

  /**
   * The place of the part that what lives here moves with: it was machined or worn in with that
   * very individual, and goes where that one goes. Cap and shells go with their rod, a lower main
   * shell with its cap, a pivot with its rocker (common practice, no source; rod and cap are
   * "matched sets", TM 9-2815-247-34, WP 0070). Empty for what runs on a surface of block, head,
   * crank or cam: that surface does not move.
   */
  public static Optional<Place> findLeader(Place place) {
    Spot spot = place.spot();
    return switch (place.kind()) {
      case ROD_CAP, ROD_SHELL ->
          Optional.of(new Place(PartKind.ROD, new RodSpot(spot.number(), ShellHalf.UPPER)));
      case MAIN_SHELL ->
          Place.canLive(PartKind.MAIN_CAP, spot)
              ? Optional.of(new Place(PartKind.MAIN_CAP, spot))
              : Optional.empty();
      case PIVOT -> Optional.of(new Place(PartKind.ROCKER, spot));
      default -> Optional.empty();
    };
  }

  /** Where a part of this home belongs while the part it moves with sits at {@code leader}. */
  public static Place beside(Place home, Place leader) {
    return home.spot() instanceof RodSpot rod && leader.spot() instanceof RodSpot other
        ? new Place(home.kind(), new RodSpot(other.cylinder(), rod.half()))
        : new Place(home.kind(), leader.spot());
  }

  private static boolean isSame(Spot one, Spot other) {
    return one.match(
        other::equals,
        bore -> isConnected(bore.cylinder(), other),
        rod -> isConnected(rod.cylinder(), other),
        main -> other instanceof MainSpot second && second.number() == main.number(),
        other::equals);
  }

  /** Whether it is the big end or the bore of this cylinder, which rod and piston connect. */
  private static boolean isConnected(int cylinder, Spot spot) {
    return spot.match(
        valve -> false,
        bore -> bore.cylinder() == cylinder,
        rod -> rod.cylinder() == cylinder,
        main -> false,
        camBearing -> false);
  }

  /** {@code pushrod, cam lobe, lifter bore}. */
  public String words() {
    List<String> words = new ArrayList<>();
    kinds.stream().sorted().map(PartKind::word).forEach(words::add);
    words.addAll(surfaces);
    return String.join(", ", words);
  }
}
