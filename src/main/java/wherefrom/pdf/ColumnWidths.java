package wherefrom.pdf;

import java.util.Arrays;
import wherefrom.job.pages.RecordSection;

/**
 * The widths of a table's columns by what stands in them: each as wide as its longest word, date or
 * figure, and the rest of the page where it saves most lines. In points.
 */
final class ColumnWidths {
  /** The width handed out at once. */
  private static final double STEP = 4;

  /** The most of the page that one unbroken word may claim. */
  private static final double LONGEST = 0.4;

  /** The part of the page up to which a cell is short: such a column is not wrapped. */
  private static final double SHORT = 0.12;

  /** What a full line counts beside a line more. */
  private static final double CROWDED = 0.02;

  /** What a cell of more lines than one loses, as its last is seldom full. */
  private static final double BROKEN = 0.6;

  private final PageLetters regular;
  private final PageLetters bold;
  private final double size;
  private final double gap;

  ColumnWidths(PageLetters regular, PageLetters bold, double size, double gap) {
    this.regular = regular;
    this.bold = bold;
    this.size = size;
    this.gap = gap;
  }

  /** Widths that fill the page, each with the gap behind it. */
  double[] of(RecordSection section, double page) {
    int count = section.columns().size();
    double[] widths = new double[count];
    double[][] cells = new double[section.rows().size()][count];
    for (int at = 0; at < count; at++) {
      widths[at] = longest(section.columns().get(at), bold);
      for (int row = 0; row < cells.length; row++) {
        RecordSection.Row one = section.rows().get(row);
        PageLetters letters = one.open() ? bold : regular;
        String cell = one.cells().get(at);
        cells[row][at] = letters.width(letters.clean(cell), size);
        widths[at] = Math.max(widths[at], longest(cell, letters));
      }
      widths[at] = Math.max(widths[at], whole(cells, at, page));
      widths[at] = Math.max(widths[at], heading(section.columns().get(at), page));
      // A hair more than the word needs, or rounding would break it.
      widths[at] = Math.min(widths[at] + 0.5, page * LONGEST) + gap;
    }
    lowerTheWidest(widths, page);
    share(widths, cells, page);
    return widths;
  }

  /** The width of a column's longest cell where all are short; else none. */
  private static double whole(double[][] cells, int at, double page) {
    double longest = Arrays.stream(cells).mapToDouble(row -> row[at]).max().orElse(0);
    return longest <= page * SHORT ? longest : 0;
  }

  /** The width of a heading where it is short; else none. */
  private double heading(String name, double page) {
    double wide = bold.width(bold.clean(name), size);
    return wide <= page * SHORT ? wide : 0;
  }

  private double longest(String text, PageLetters letters) {
    double longest = 0;
    for (String word : letters.words(text)) {
      longest = Math.max(longest, letters.width(word, size));
    }
    return longest;
  }

  /** Where the longest words do not fit side by side, the widest columns give way first. */
  private static void lowerTheWidest(double[] widths, double page) {
    double over = Arrays.stream(widths).sum() - page;
    while (over > 0) {
      int widest = 0;
      for (int at = 1; at < widths.length; at++) {
        widest = widths[at] > widths[widest] ? at : widest;
      }
      double less = Math.min(over, STEP);
      widths[widest] -= less;
      over -= less;
    }
  }

  /** Hands out what is left of the page, each step where it shortens the rows most. */
  private void share(double[] widths, double[][] cells, double page) {
    double left = page - Arrays.stream(widths).sum();
    while (left > 0) {
      double step = Math.min(left, STEP);
      int best = 0;
      double least = Double.MAX_VALUE;
      for (int at = 0; at < widths.length; at++) {
        widths[at] += step;
        double height = height(cells, widths);
        widths[at] -= step;
        if (height < least) {
          least = height;
          best = at;
        }
      }
      widths[best] += step;
      left -= step;
    }
  }

  /**
   * The height of all rows in lines, about: that of each row is nearly its highest cell's, and
   * lower cells count a little, so that a step towards fewer lines is seen before the line is gone.
   * A cell of one line saves nothing by more room: it is only to stand less crowded.
   */
  private double height(double[][] cells, double[] widths) {
    double height = 0;
    for (double[] row : cells) {
      double sum = 0;
      for (int at = 0; at < widths.length; at++) {
        double wide = row[at] / (widths[at] - gap);
        double lines = (wide <= 1 ? 1 : wide + BROKEN) + CROWDED * wide;
        double squared = lines * lines;
        sum += squared * squared * squared;
      }
      height += Math.cbrt(Math.sqrt(sum));
    }
    return height;
  }
}
