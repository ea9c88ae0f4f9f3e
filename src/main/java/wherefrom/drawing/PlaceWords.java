package wherefrom.drawing;

import wherefrom.engine.Layout;
import wherefrom.engine.ShellHalf;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/** Places in words, as they are called on this engine. */
public final class PlaceWords {
  private PlaceWords() {}

  /** As {@link Place#words()}; a split case has a left and a right half, no upper and lower. */
  public static String of(Layout layout, Place place) {
    return isHalfOfCase(layout, place)
        ? "main " + place.spot().number() + ", " + half(layout, place) + " shell"
        : place.words();
  }

  /** Whether it is a shell of a main in a split case, which has no caps. */
  public static boolean isHalfOfCase(Layout layout, Place place) {
    return place.kind() == PartKind.MAIN_SHELL && !layout.mainCaps();
  }

  /** Which half a shell is: {@code upper}, or {@code left case} where the case is split. */
  public static String half(Layout layout, Place shell) {
    ShellHalf half = shell.spot().findHalf().orElseThrow();
    return isHalfOfCase(layout, shell) ? caseHalf(half) + " case" : half.word();
  }

  /** The half of a split case that holds a half of a main: the left one is seen above. */
  static String caseHalf(ShellHalf half) {
    return half == ShellHalf.UPPER ? "left" : "right";
  }
}
