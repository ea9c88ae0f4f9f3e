package wherefrom.print;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import wherefrom.pdf.Typeface;

/** Breaks words into lines. */
final class Wrap {
  private static final Pattern SPACES = Pattern.compile(" +");

  private Wrap() {}

  /**
   * The lines of a text, broken at spaces; a word that is too long for a line is shortened.
   *
   * @param width of a line, in heights of the capitals
   */
  static List<String> lines(Typeface face, String text, double width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : SPACES.split(face.clean(text), -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && face.width(longer) > width) {
        lines.add(line);
        longer = word;
      }
      line = face.shorten(longer, width);
    }
    lines.add(line);
    return lines;
  }
}
