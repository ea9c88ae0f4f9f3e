package wherefrom.ui.controls;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import javafx.scene.text.Text;

/**
 * Breaks words into lines by arithmetic alone: widths grow with the font's size, so each piece is
 * measured once, at one size. For the window's thread only.
 */
final class Wrapping {
  private static final double AT = 100;
  private static final Map<String, Double> REGULAR = new HashMap<>();
  private static final Map<String, Double> BOLD = new HashMap<>();

  /**
   * Behind a space, a slash or the like, an underscore in a path, or a hyphen within a word; but a
   * figure stays with its unit, a plus-minus with its figure, the letter below a symbol with it,
   * and what names a place or a part stays whole: {@code 3 EX}, {@code rod 4}, {@code 0065 54}.
   */
  private static final Pattern BREAK =
      Pattern.compile(
          "(?<=[ /\\\\]|[A-Za-z0-9]{2}_)(?<!± )(?!…)(?!(?<=\\d )(?:in|mm|cc|deg|psi|rpm|g|%|N·m|lb·ft|IN|EX)(?![A-Za-z]))"
              + "(?!(?<=\\b\\d{4} )\\d\\d(?!\\d))(?!(?<=\\b(?:[Rr]od|[Mm]ain|[Bb]olt) )\\d)"
              + "|(?<=[a-z]-)(?=[a-z0-9])");

  /** Where words may be broken is looked for once; so many of the latest are kept. */
  private static final int KEPT = 2_000;

  private static final Map<String, List<List<String>>> BROKEN =
      new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, List<List<String>>> eldest) {
          return size() > KEPT;
        }
      };

  private final boolean bold;
  private final List<List<String>> paragraphs;

  /** A line may end after a space, and within paths and codes after a slash or a hyphen. */
  Wrapping(String words, boolean bold) {
    this.bold = bold;
    this.paragraphs = BROKEN.computeIfAbsent(words, Wrapping::paragraphs);
  }

  private static List<List<String>> paragraphs(String words) {
    List<List<String>> paragraphs = new ArrayList<>();
    for (String paragraph : words.split("\n", -1)) {
      paragraphs.add(List.of(BREAK.split(paragraph, -1)));
    }
    return List.copyOf(paragraphs);
  }

  private double width(String piece, double size) {
    return perPixel(piece) * size;
  }

  private double perPixel(String piece) {
    return (bold ? BOLD : REGULAR).computeIfAbsent(piece, fresh -> measure(fresh) / AT);
  }

  private double measure(String piece) {
    Text text = new Text();
    text.setFont(Fonts.of(AT, bold));
    text.setText(piece);
    return text.getLayoutBounds().getWidth();
  }

  static double lineHeight(double size) {
    return size * Fonts.LINE;
  }

  /** The width of the widest piece that cannot be broken. */
  double widestPiece(double size) {
    double widest = 0;
    for (List<String> paragraph : paragraphs) {
      for (String piece : paragraph) {
        widest = Math.max(widest, width(piece.stripTrailing(), size));
      }
    }
    return widest;
  }

  /** The width of the widest paragraph in one line. */
  double lineWidth(double size) {
    double widest = 0;
    for (List<String> paragraph : paragraphs) {
      double sum = 0;
      for (String piece : paragraph) {
        sum += width(piece, size);
      }
      widest = Math.max(widest, sum);
    }
    return widest;
  }

  int count(double size, double width) {
    int lines = 0;
    for (List<String> paragraph : paragraphs) {
      double used = 0;
      lines++;
      for (String piece : paragraph) {
        if (used > 0 && used + width(piece.stripTrailing(), size) > width) {
          lines++;
          used = 0;
        }
        used += width(piece, size);
      }
    }
    return lines;
  }

  /** Behind the last letter of each line, with the space or the line break that ends it. */
  List<Integer> ends(double size, double width) {
    List<Integer> ends = new ArrayList<>();
    int at = 0;
    for (List<String> paragraph : paragraphs) {
      double used = 0;
      for (String piece : paragraph) {
        if (used > 0 && used + width(piece.stripTrailing(), size) > width) {
          ends.add(at);
          used = 0;
        }
        used += width(piece, size);
        at += piece.length();
      }
      ends.add(++at);
    }
    ends.set(ends.size() - 1, at - 1);
    return ends;
  }

  /** The words with a line break wherever a line ends. */
  String broken(double size, double width) {
    StringBuilder lines = new StringBuilder();
    for (List<String> paragraph : paragraphs) {
      double used = 0;
      if (!lines.isEmpty()) {
        lines.append('\n');
      }
      for (String piece : paragraph) {
        if (used > 0 && used + width(piece.stripTrailing(), size) > width) {
          trim(lines);
          lines.append('\n');
          used = 0;
        }
        lines.append(piece);
        used += width(piece, size);
      }
      trim(lines);
    }
    return lines.toString();
  }

  private static void trim(StringBuilder lines) {
    while (!lines.isEmpty() && lines.charAt(lines.length() - 1) == ' ') {
      lines.setLength(lines.length() - 1);
    }
  }
}
