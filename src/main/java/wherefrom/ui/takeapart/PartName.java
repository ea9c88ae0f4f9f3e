package wherefrom.ui.takeapart;

import java.util.Locale;
import wherefrom.drawing.PlaceWords;
import wherefrom.engine.Layout;
import wherefrom.engine.Spot;
import wherefrom.engine.ValveSpot;
import wherefrom.parts.Part;
import wherefrom.parts.Place;

/**
 * What a part is called at the engine: the place in a word and a figure, to be read from afar, and
 * what of it.
 *
 * @param place {@code 3 EX}, {@code Rod 4}, {@code Main 2}
 * @param what {@code pushrod}, {@code lower shell}, {@code cap}
 */
public record PartName(String place, String what) {

  public static PartName of(Layout layout, Part part) {
    return of(layout, part.home());
  }

  public static PartName of(Layout layout, Place home) {
    return new PartName(place(home.spot()), what(layout, home));
  }

  private static String place(Spot spot) {
    return spot.match(
        ValveSpot::figures,
        bore -> "Bore " + bore.cylinder(),
        rod -> "Rod " + rod.cylinder(),
        main -> "Main " + main.number(),
        bearing -> "Cam " + bearing.number());
  }

  private static String what(Layout layout, Place home) {
    return switch (home.kind()) {
      case ROD_SHELL, MAIN_SHELL -> afterComma(PlaceWords.of(layout, home));
      case ROD_CAP, MAIN_CAP -> "cap";
      case CAM_BEARING -> "bearing";
      default -> home.kind().word();
    };
  }

  private static String afterComma(String words) {
    return words.substring(words.indexOf(',') + 2);
  }

  /** In one line: {@code 3 EX pushrod}, {@code Rod 4, lower shell}. */
  public String words() {
    return line();
  }

  /** The same within a sentence: {@code 3 EX pushrod}, {@code rod 4, lower shell}. */
  public String inLine() {
    String words = line();
    return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
  }

  /** The same in fewer words: {@code rod 4, lower}. */
  public String brief() {
    String words = inLine();
    boolean half = words.endsWith("er shell");
    return half ? words.substring(0, words.length() - " shell".length()) : words;
  }

  private String line() {
    if (what.equals("rod")) {
      return place;
    }
    return place + (Character.isDigit(place.charAt(0)) ? " " : ", ") + what;
  }
}
