package wherefrom.ui.controls;

import wherefrom.engine.Spot;
import wherefrom.parts.Home;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/** Which side of the engine is drawn. */
public enum EngineSide {
  TOP("Seen from above"),
  BOTTOM("Seen from below"),
  BLOCK("Seen from above");

  private final String seen;

  EngineSide(String seen) {
    this.seen = seen;
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
}
