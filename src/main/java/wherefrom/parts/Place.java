package wherefrom.parts;

import java.util.Optional;
import wherefrom.engine.BoreSpot;
import wherefrom.engine.CamBearingSpot;
import wherefrom.engine.MainSpot;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;
import wherefrom.engine.ValveSpot;

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
    return switch (kind) {
      case ROD_CAP -> spot instanceof RodSpot rod && rod.half() == ShellHalf.LOWER;
      case ROD -> spot instanceof RodSpot rod && rod.half() == ShellHalf.UPPER;
      case MAIN_CAP -> spot instanceof MainSpot main && main.half() == ShellHalf.LOWER;
      default -> homeOf(spot) == kind.home();
    };
  }

  /** The kind of home that a spot is. */
  public static Home homeOf(Spot spot) {
    if (spot instanceof ValveSpot) {
      return Home.VALVE;
    }
    if (spot instanceof BoreSpot) {
      return Home.BORE;
    }
    if (spot instanceof RodSpot) {
      return Home.ROD;
    }
    return spot instanceof CamBearingSpot ? Home.CAM_BEARING : Home.MAIN;
  }

  /** In words: {@code cylinder 3, exhaust, pushrod} or {@code main 2, upper shell}. */
  public String words() {
    return switch (kind) {
      case ROD_SHELL -> {
        RodSpot rod = (RodSpot) spot;
        yield "rod " + rod.cylinder() + ", " + rod.half().word() + " shell";
      }
      case MAIN_SHELL -> {
        MainSpot main = (MainSpot) spot;
        yield "main " + main.number() + ", " + main.half().word() + " shell";
      }
      case ROD -> "cylinder " + ((RodSpot) spot).cylinder() + ", rod";
      case ROD_CAP -> "rod " + ((RodSpot) spot).cylinder() + ", cap";
      case MAIN_CAP -> "main " + ((MainSpot) spot).number() + ", cap";
      case PISTON -> "cylinder " + ((BoreSpot) spot).cylinder() + ", piston";
      case CAM_BEARING -> spot.words();
      default -> spot.words() + ", " + kind.word();
    };
  }

  /** The spot in large print, such as {@code 3 EX}. */
  public String figures() {
    return spot.figures();
  }

  /** Its name on the glass, without its kind where that is told: {@code 3 EX}, {@code rod 8, cap}. */
  public String brief() {
    return switch (kind) {
      case ROD -> "rod " + ((RodSpot) spot).cylinder();
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
