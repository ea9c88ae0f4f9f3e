package wherefrom.scan.find;

import java.util.Arrays;
import wherefrom.scan.grey.Level;

/**
 * A level cut into dark and light by comparing each pixel with the mean around it, as runs along
 * the rows. The buffers are kept from frame to frame.
 */
final class Runs {
  /** Half the side of the square whose mean a pixel is compared with. */
  private final int reach;

  /** How many grey values below the mean a dark pixel lies. */
  private final int below;

  private int[] columns = new int[0];
  private int[] rows = new int[0];
  private int count;
  private int[] start = new int[1 << 14];
  private int[] end = new int[1 << 14];
  private boolean[] dark = new boolean[1 << 14];

  /** Of the row that is being cut: the sum around a pixel, the run that has begun. */
  private int sum;

  private int begun;
  private boolean before;

  /** Columns of which sums are taken: those that are cut and what is in reach of them. */
  private int firstSum;

  private int endSum;

  Runs(int reach, int below) {
    this.reach = reach;
    this.below = below;
  }

  int count() {
    return count;
  }

  /** The first run of a row; {@code firstOf(height)} is the count. */
  int firstOf(int row) {
    return rows[row];
  }

  /** The first column of each run; not a copy. */
  int[] starts() {
    return start;
  }

  /** The column after the last of each run; not a copy. */
  int[] ends() {
    return end;
  }

  int start(int run) {
    return start[run];
  }

  /** The column after its last. */
  int end(int run) {
    return end[run];
  }

  boolean dark(int run) {
    return dark[run];
  }

  /**
   * Cuts a part of a level, in its pixels; rows above and below stay empty. Along a row dark and
   * light runs take turns.
   */
  void cut(Level level, Window part) {
    int width = level.width();
    int height = level.height();
    int first = part.top();
    int end = Math.max(first, part.bottom());
    columns = columns.length == width ? columns : new int[width];
    rows = rows.length == height + 1 ? rows : new int[height + 1];
    firstSum = Math.max(0, part.left() - reach - 1);
    endSum = Math.min(width, part.right() + reach);
    Arrays.fill(columns, 0);
    count = 0;
    byte[] pixels = level.pixels();
    for (int row = Math.max(0, first - reach); row < Math.min(first + reach, height); row++) {
      addRow(pixels, row * width, 1);
    }
    Arrays.fill(rows, 0, first, 0);
    for (int row = first; row < end; row++) {
      move(pixels, row, first, width, height);
      int lines = Math.min(height - 1, row + reach) - Math.max(0, row - reach) + 1;
      rows[row] = count;
      if (part.left() < part.right()) {
        cutRow(pixels, row * width, width, lines, part);
      }
    }
    Arrays.fill(rows, end, height + 1, count);
  }

  /** Goes to a row: takes in the one that comes into reach and leaves out the one that goes. */
  private void move(byte[] pixels, int row, int first, int width, int height) {
    boolean comes = row + reach < height;
    boolean goes = row - reach - 1 >= 0 && row > first;
    int in = (row + reach) * width;
    int out = (row - reach - 1) * width;
    if (comes && goes) {
      int[] sums = columns;
      int last = endSum;
      for (int column = firstSum; column < last; column++) {
        sums[column] += (pixels[in + column] & 0xFF) - (pixels[out + column] & 0xFF);
      }
    } else if (comes) {
      addRow(pixels, in, 1);
    } else if (goes) {
      addRow(pixels, out, -1);
    }
  }

  private void addRow(byte[] pixels, int from, int sign) {
    int[] sums = columns;
    int last = endSum;
    for (int column = firstSum; column < last; column++) {
      sums[column] += sign * (pixels[from + column] & 0xFF);
    }
  }

  private void cutRow(byte[] pixels, int from, int width, int lines, Window part) {
    int first = part.left();
    int end = part.right();
    sum = 0;
    for (int column = Math.max(0, first - reach - 1);
        column < Math.min(first + reach, width);
        column++) {
      sum += columns[column];
    }
    before = false;
    begun = first;
    int inner = Math.min(Math.max(reach + 1, first), end);
    int outer = Math.min(Math.max(inner, width - reach), end);
    edge(pixels, from, width, lines, first, inner);
    inside(pixels, from, lines, inner, outer);
    edge(pixels, from, width, lines, outer, end);
    add(begun, end, before);
  }

  /** Columns whose square is cut off by the picture's edge. */
  private void edge(byte[] pixels, int from, int width, int lines, int first, int end) {
    for (int column = first; column < end; column++) {
      int right = column + reach;
      int left = column - reach - 1;
      sum += (right < width ? columns[right] : 0) - (left >= 0 ? columns[left] : 0);
      int across = Math.min(width - 1, right) - Math.max(0, left + 1) + 1;
      take(column, ((pixels[from + column] & 0xFF) + below) * across * lines < sum);
    }
  }

  /** Columns whose square lies wholly between the picture's sides. */
  private void inside(byte[] pixels, int from, int lines, int first, int end) {
    int places = (2 * reach + 1) * lines;
    int ahead = reach;
    int behind = reach + 1;
    int darker = below;
    int[] sums = columns;
    int around = sum;
    boolean last = before;
    for (int column = first; column < end; column++) {
      around += sums[column + ahead] - sums[column - behind];
      boolean isDark = ((pixels[from + column] & 0xFF) + darker) * places < around;
      if (isDark != last) {
        take(column, isDark);
        last = isDark;
      }
    }
    sum = around;
  }

  /** Ends the run where the color changes; a row's first run may be dark. */
  private void take(int column, boolean isDark) {
    if (isDark != before && column > begun) {
      add(begun, column, before);
      begun = column;
    }
    before = isDark;
  }

  private void add(int from, int to, boolean isDark) {
    if (count == start.length) {
      start = Arrays.copyOf(start, 2 * count);
      end = Arrays.copyOf(end, 2 * count);
      dark = Arrays.copyOf(dark, 2 * count);
    }
    start[count] = from;
    end[count] = to;
    dark[count] = isDark;
    count++;
  }
}
