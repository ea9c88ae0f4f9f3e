package wherefrom.parts;

import java.util.Optional;
import wherefrom.engine.ShellHalf;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;

/**
 * One spot in the engine that one part occupies.
 *
 * @param kind what lives there
 * @param spot where it is; must be one that the kind can live at
 */
public record Place(PartKind kind, Spot spot) {
  public Place {
    if (!canLive(kind, spot)) {
      throw new IllegalArgumentException("no " + kind.word() + " lives at " + spot.words());
    }
  }

  /** Whether a part of this kind can live at this spot at all. */
  public static boolean canLive(PartKind kind, Spot spot) {
    return homeOf(spot) == kind.home() && isOnItsSide(kind, spot);
  }

  /** A cap is in the lower half of its bearing, a rod the upper one of its big end. */
  private static boolean isOnItsSide(PartKind kind, Spot spot) {
    return switch (kind) {
      case ROD_CAP, MAIN_CAP -> spot.findHalf().equals(Optional.of(ShellHalf.LOWER));
      case ROD -> spot.findHalf().equals(Optional.of(ShellHalf.UPPER));
      default -> true;
    };
  }

  /** The kind of home that a spot is. */
  public static Home homeOf(Spot spot) {
    return spot.match(
        valve -> Home.VALVE,
        bore -> Home.BORE,
        rod -> Home.ROD,
        main -> Home.MAIN,
        camBearing -> Home.CAM_BEARING);
  }

  /** In words: {@code cylinder 3, exhaust, pushrod} or {@code main 2, upper shell}. */
  public String words() {
    int number = spot.number();
    return switch (kind) {
      case ROD_SHELL -> "rod " + number + ", " + shell();
      case MAIN_SHELL -> "main " + number + ", " + shell();
      case ROD -> "cylinder " + number + ", rod";
      case ROD_CAP -> "rod " + number + ", cap";
      case MAIN_CAP -> "main " + number + ", cap";
      case PISTON -> "cylinder " + number + ", piston";
      case CAM_BEARING -> spot.words();
      default -> spot.words() + ", " + kind.word();
    };
  }

  /**
   * Which of two shells it is: {@code upper shell}.
   *
   * @throws java.util.NoSuchElementException where it is the place of no shell
   */
  public String shell() {
    return half() + " shell";
  }

  private String half() {
    return spot.findHalf().orElseThrow().word();
  }

  /** The spot in large print, such as {@code 3 EX}. */
  public String figures() {
    return spot.figures();
  }

  /**
   * Its name on the glass, without its kind where that is told: {@code 3 EX}, {@code rod 8, cap}.
   */
  public String brief() {
    return switch (kind) {
      case ROD -> "rod " + spot.number();
      case ROD_CAP, MAIN_CAP -> words();
      default -> spot.brief();
    };
  }

  /** The name in files, such as {@code pushrod@3EX}. Never changes. */
  public String key() {
    return kind.key() + "@" + spot.key();
  }

  /** The place with this {@link #key()}; empty when the text is no such key. */
  public static Optional<Place> find(String key) {
    int at = key.indexOf('@');
    if (at < 0) {
      return Optional.empty();
    }
    Optional<PartKind> kind = PartKind.find(key.substring(0, at));
    Optional<Spot> spot = Spots.find(key.substring(at + 1));
    return kind.flatMap(k -> spot.filter(s -> canLive(k, s)).map(s -> new Place(k, s)));
  }
}
