package wherefrom.ui.controls;

import java.util.ArrayList;
import java.util.List;

/**
 * The words of a row that only tells: where a page may end within them, and what each piece then
 * says. Letters are counted through the heading and all lines. What ends within a sentence says so
 * by dots, or by the mark that stands there; a mark and dots together look as if words were left
 * out. What goes on has the beginning of the heading above it, so that one knows of what it tells.
 */
final class RowWords {
  private static final String DOTS = "…";
  private static final String MARKS = ".!?;:,";

  /** So narrow that each line holds no more than can stand alone, in pixels. */
  private static final double NARROWEST = 1;

  /** Letters of one kind. */
  interface Letters {
    /**
     * Behind the last letter of each line that words are wrapped into.
     *
     * @param width in pixels
     */
    List<Integer> ends(String words, double width);
  }

  /**
   * What a piece says.
   *
   * @param heading may be empty
   * @param goesOn whether more follows
   */
  record Said(String heading, List<String> lines, boolean goesOn) {}

  private final String heading;
  private final List<String> blocks = new ArrayList<>();
  private final Letters bold;
  private final Letters plain;

  /**
   * @param heading may be empty, as may a line
   * @param bold the letters of the heading
   * @param plain the letters of the lines
   */
  RowWords(String heading, List<String> lines, Letters bold, Letters plain) {
    this.heading = heading;
    this.bold = bold;
    this.plain = plain;
    blocks.add(heading);
    lines.stream().filter(line -> !line.isEmpty()).forEach(blocks::add);
  }

  /** How many letters there are. */
  int count() {
    return blocks.stream().mapToInt(String::length).sum();
  }

  private Letters letters(int block) {
    return block == 0 ? bold : plain;
  }

  /** The ends that {@link Pages.Rows#ends} asks for, behind a letter of these words. */
  List<Integer> ends(int from, double width, int least) {
    List<Integer> ends = new ArrayList<>();
    int start = 0;
    for (int block = 0; block < blocks.size(); block++) {
      int stop = start + blocks.get(block).length();
      if (stop > from) {
        ends.addAll(within(block, start, Math.max(start, from), width, least));
      }
      boolean last = stop == count();
      boolean mayStand = block > 0 || least == 1 || isText(width, least);
      if (stop > from && !last && mayStand) {
        ends.add(stop);
      }
      start = stop;
    }
    return ends.stream().distinct().toList();
  }

  /** Whether the heading is a text itself, which may stand without what is said of it. */
  private boolean isText(double width, int least) {
    return bold.ends(heading, width).size() >= 2 * least;
  }

  private List<Integer> within(int block, int start, int from, double width, int least) {
    String before = from > start ? DOTS + " " : "";
    String words = before + blocks.get(block).substring(from - start);
    List<Integer> lines = letters(block).ends(words, width);
    List<Integer> breaks = letters(block).ends(words, NARROWEST);
    List<Integer> ends = new ArrayList<>();
    for (int line = least; line <= lines.size() - least; line++) {
      int begin = line == 1 ? 0 : lines.get(line - 2);
      int end = signedEnd(letters(block), words, breaks, begin, lines.get(line - 1), width);
      if (end > before.length()) {
        ends.add(from + end - before.length());
      }
    }
    return ends;
  }

  /** The last end between two words at which one line holds the words and their sign; 0 if none. */
  private static int signedEnd(
      Letters letters, String words, List<Integer> breaks, int begin, int upTo, double width) {
    for (int at = breaks.size() - 1; at >= 0 && breaks.get(at) > begin; at--) {
      int end = breaks.get(at);
      if (end <= upTo
          && isBetweenWords(words, end)
          && letters.ends(signed(words.substring(begin, end)), width).size() == 1) {
        return end;
      }
    }
    return 0;
  }

  private static boolean isBetweenWords(String words, int at) {
    return at > 0 && Character.isWhitespace(words.charAt(at - 1));
  }

  private static String signed(String words) {
    String told = words.strip();
    boolean marked = !told.isEmpty() && MARKS.indexOf(told.charAt(told.length() - 1)) >= 0;
    return marked ? told : told + " " + DOTS;
  }

  /** What stands between two letters, in this width. */
  Said piece(int from, int to, double width) {
    List<String> told = new ArrayList<>();
    int start = 0;
    for (String block : blocks) {
      int stop = start + block.length();
      told.add(part(block, Math.max(from, start) - start, Math.min(to, stop) - start));
      start = stop;
    }
    String head = from >= heading.length() ? begun(width) : told.get(0);
    List<String> lines =
        new ArrayList<>(
            told.subList(1, told.size()).stream().filter(line -> !line.isEmpty()).toList());
    if (to < count() && !lines.isEmpty()) {
      // A list that ends with a whole line is not all of it either.
      lines.set(lines.size() - 1, goingOn(lines.get(lines.size() - 1)));
    }
    return new Said(head, List.copyOf(lines), to < count());
  }

  private static String goingOn(String line) {
    return line.endsWith(DOTS) ? line : signed(line);
  }

  private static String part(String block, int from, int to) {
    if (from >= to) {
      return "";
    }
    String before = from > 0 ? DOTS + " " : "";
    String words = before + block.substring(from, to).strip();
    return to < block.length() ? signed(words) : words;
  }

  /** The heading in one line. */
  private String begun(double width) {
    List<Integer> lines = bold.ends(heading, width);
    if (lines.size() == 1) {
      return heading;
    }
    List<Integer> breaks = bold.ends(heading, NARROWEST);
    int end = signedEnd(bold, heading, breaks, 0, lines.get(0), width);
    return end == 0 ? heading : signed(heading.substring(0, end));
  }
}
