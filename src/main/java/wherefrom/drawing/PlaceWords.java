package wherefrom.drawing;

import wherefrom.engine.Layout;
import wherefrom.engine.ShellHalf;
import wherefrom.engine.ValveSpot;
import wherefrom.parts.Part;
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

  /** A place on the glass, with its kind: {@code 3 EX pushrod}, {@code rod 4, lower shell}. */
  public static String named(Layout layout, Place place) {
    return place.spot() instanceof ValveSpot valve
        ? valve.figures() + " " + place.kind().word()
        : of(layout, place);
  }

  /** The same of a part: {@code 3 EX new pushrod}, {@code rod 4, new lower shell}. */
  public static String named(Layout layout, Part part) {
    String name = named(layout, part.home());
    if (!part.fresh()) {
      return name;
    }
    int at =
        part.home().spot() instanceof ValveSpot valve
            ? valve.figures().length() + 1
            : name.indexOf(", ") + (name.contains(", ") ? 2 : 1);
    return name.substring(0, at) + "new " + name.substring(at);
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
