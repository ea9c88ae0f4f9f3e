package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Touch;

/** Rows of a list that hold words to be read: one, or several where letters are large. */
final class ToRead {
  /** So many letters of usual size are a page that is read at once; larger ones are fewer. */
  private static final int LETTERS = 360;

  private static final double LETTERS_SHRINK = 2.9;

  private ToRead() {}

  /** What is to be read under a heading; either may be empty. */
  static List<Region> rows(Touch touch, String heading, String words) {
    int most = (int) (LETTERS / Math.pow(touch.scale().textFactor(), LETTERS_SHRINK));
    return rows(touch, heading, words, most);
  }

  /**
   * The same in portions of another size.
   *
   * @param most letters of a portion
   */
  static List<Region> rows(Touch touch, String heading, String words, int most) {
    List<Region> rows = new ArrayList<>();
    String first = heading;
    if (heading.length() > most / 2 && touch.isLarge()) {
      Portions.of(heading, most).forEach(portion -> rows.add(portion(touch, portion, "")));
      first = "";
    }
    for (String portion : words.isEmpty() ? List.<String>of() : Portions.of(words, most)) {
      rows.add(portion(touch, first, portion));
      first = "";
    }
    if (!first.isEmpty() && words.isEmpty()) {
      rows.add(ListRow.plain(touch, first, List.of()));
    }
    return rows;
  }

  /** A portion of what is to be read; where it goes on no line parts it from the next. */
  static Region portion(Touch touch, String heading, String words) {
    boolean more = Portions.goesOn(words.isEmpty() ? heading : words);
    List<String> lines = List.of(words);
    return more ? ListRow.begun(touch, heading, lines) : ListRow.plain(touch, heading, lines);
  }
}
