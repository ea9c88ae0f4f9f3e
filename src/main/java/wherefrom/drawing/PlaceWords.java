package wherefrom.drawing;

import wherefrom.engine.Layout;
import wherefrom.engine.MainSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/** Places in words, as they are called on this engine. */
public final class PlaceWords {
  private PlaceWords() {}

  /** As {@link Place#words()}; a split case has a left and a right half, no upper and lower. */
  public static String of(Layout layout, Place place) {
    if (place.kind() == PartKind.MAIN_SHELL
        && !layout.mainCaps()
        && place.spot() instanceof MainSpot main) {
      return "main " + main.number() + ", " + caseHalf(main.half()) + " case shell";
    }
    return place.words();
  }

  /** The half of a split case that holds a half of a main: the left one is seen above. */
  static String caseHalf(ShellHalf half) {
    return half == ShellHalf.UPPER ? "left" : "right";
  }
}
