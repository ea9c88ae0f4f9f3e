package wherefrom.ui.controls;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import wherefrom.engine.Spot;
import wherefrom.parts.Home;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/** Which side of the engine is drawn. */
public enum EngineSide {
  TOP("Valvetrain", "Seen from above"),
  BOTTOM("Bottom end", "Seen from below"),
  BLOCK("Bores and cam", "Seen from above");

  private final String words;
  private final String seen;

  EngineSide(String words, String seen) {
    this.words = words;
    this.seen = seen;
  }

  /** What the key for it says. */
  public String words() {
    return words;
  }

  /** How it is looked at. */
  public String seen() {
    return seen + "; left and right as seen from the flywheel end";
  }

  /** The side that shows a spot. */
  public static EngineSide of(Spot spot) {
    return of(Place.homeOf(spot));
  }

  /** The side that shows where a kind of part lives. */
  public static EngineSide of(PartKind kind) {
    return of(kind.home());
  }

  private static EngineSide of(Home home) {
    return switch (home) {
      case VALVE -> TOP;
      case ROD, MAIN -> BOTTOM;
      case BORE, CAM_BEARING -> BLOCK;
    };
  }

  /** The sides that have something to show for these kinds. */
  public static List<EngineSide> listFor(Collection<PartKind> kinds) {
    return Arrays.stream(values())
        .filter(side -> kinds.stream().anyMatch(kind -> of(kind) == side))
        .toList();
  }
}
