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
   * Cuts the rows from first up to before end; the others stay empty. Along a row dark and light
   * runs take turns.
   */
  void cut(Level level, int first, int end) {
    int width = level.width();
    int height = level.height();
    columns = columns.length == width ? columns : new int[width];
    rows = rows.length == height + 1 ? rows : new int[height + 1];
    Arrays.fill(columns, 0);
    count = 0;
    byte[] pixels = level.pixels();
    for (int row = Math.max(0, first - reach); row < Math.min(first + reach, height); row++) {
      addRow(pixels, row * width, width, 1);
    }
    Arrays.fill(rows, 0, first, 0);
    for (int row = first; row < end; row++) {
      move(pixels, row, first, width, height);
      int lines = Math.min(height - 1, row + reach) - Math.max(0, row - reach) + 1;
      rows[row] = count;
      cutRow(pixels, row * width, width, lines);
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
      for (int column = 0; column < width; column++) {
        columns[column] += (pixels[in + column] & 0xFF) - (pixels[out + column] & 0xFF);
      }
    } else if (comes) {
      addRow(pixels, in, width, 1);
    } else if (goes) {
      addRow(pixels, out, width, -1);
    }
  }

  private void addRow(byte[] pixels, int from, int width, int sign) {
    for (int column = 0; column < width; column++) {
      columns[column] += sign * (pixels[from + column] & 0xFF);
    }
  }

  private void cutRow(byte[] pixels, int from, int width, int lines) {
    sum = 0;
    for (int column = 0; column < Math.min(reach, width); column++) {
      sum += columns[column];
    }
    before = false;
    begun = 0;
    int inner = Math.min(reach + 1, width);
    int outer = Math.max(inner, width - reach);
    edge(pixels, from, width, lines, 0, inner);
    inside(pixels, from, lines, inner, outer);
    edge(pixels, from, width, lines, outer, width);
    add(begun, width, before);
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
    int around = sum;
    boolean last = before;
    for (int column = first; column < end; column++) {
      around += columns[column + reach] - columns[column - reach - 1];
      boolean isDark = ((pixels[from + column] & 0xFF) + below) * places < around;
      if (isDark != last) {
        add(begun, column, last);
        begun = column;
        last = isDark;
      }
    }
    sum = around;
    before = last;
  }

  private void take(int column, boolean isDark) {
    if (isDark != before && column > 0) {
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
