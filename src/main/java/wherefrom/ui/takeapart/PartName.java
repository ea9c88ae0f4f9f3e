package wherefrom.ui.takeapart;

import wherefrom.drawing.PlaceWords;
import wherefrom.engine.Layout;
import wherefrom.engine.Spot;
import wherefrom.engine.ValveSpot;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.text.Words;

/**
 * What a part is called at the engine: the place in a word and a figure, to be read from afar, and
 * what of it.
 *
 * @param kind of the part
 * @param place {@code 3 EX}, {@code Rod 4}, {@code Main 2}, {@code Cylinder 1}, {@code Cam bearing
 *     3}
 * @param what {@code pushrod}, {@code lower shell}, {@code cap}; empty where the place says it
 * @param least the same in the fewest words, such as {@code lower}
 */
public record PartName(PartKind kind, String place, String what, String least) {

  public static PartName of(Layout layout, Part part) {
    return of(layout, part.home());
  }

  public static PartName of(Layout layout, Place home) {
    PartKind kind = home.kind();
    boolean shell = kind == PartKind.ROD_SHELL || kind == PartKind.MAIN_SHELL;
    String what = shell ? PlaceWords.half(layout, home) + " shell" : what(kind);
    boolean half = shell && !PlaceWords.isHalfOfCase(layout, home);
    String least = half ? PlaceWords.half(layout, home) : what;
    return new PartName(kind, place(home.spot()), what, least);
  }

  private static String place(Spot spot) {
    return spot.match(
        ValveSpot::figures,
        bore -> "Cylinder " + bore.cylinder(),
        rod -> "Rod " + rod.cylinder(),
        main -> "Main " + main.number(),
        bearing -> "Cam bearing " + bearing.number());
  }

  private static String what(PartKind kind) {
    return switch (kind) {
      case ROD_CAP, MAIN_CAP -> "cap";
      // Its place has all the words.
      case CAM_BEARING -> "";
      default -> kind.word();
    };
  }

  /** In one line: {@code 3 EX pushrod}, {@code Rod 4, lower shell}. */
  public String words() {
    return line(what);
  }

  /** The same within a sentence: {@code 3 EX pushrod}, {@code rod 4, lower shell}. */
  public String inLine() {
    return Words.small(words());
  }

  /** The same in fewer words: {@code rod 4, lower}. */
  public String brief() {
    return Words.small(line(least));
  }

  private String line(String named) {
    if (kind == PartKind.ROD || named.isEmpty()) {
      return place;
    }
    return place + (Character.isDigit(place.charAt(0)) ? " " : ", ") + named;
  }
}
