package wherefrom.print;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The outlines of the dark areas of a symbol, to be filled by the even-odd rule as one path: with
 * no edges inside an area no renderer can leave hairlines there.
 *
 * <p>A point of the grid is a corner when an odd number of the four modules round it is dark. Edges
 * run between the first and the second corner of a line, the third and the fourth, and so on, along
 * rows and columns alike. Where two dark modules touch by a point alone, outlines cross; by the
 * even-odd rule that fills the same.
 */
final class SymbolOutline {
  private static final int ACROSS = Modules.WIDTH + 1;
  private static final int NONE = -1;

  private final int[] columns;
  private final int[] rows;

  /** The corner at the other end of the edge along the column. */
  private final int[] down;

  private int corners;

  private SymbolOutline(int count) {
    columns = new int[count];
    rows = new int[count];
    down = new int[count];
  }

  /** The closed outlines, each as its corners {@code x, y, x, y…} in modules from the top left. */
  static List<int[]> of(Modules modules) {
    long[] marked = new long[ACROSS];
    int count = 0;
    for (int row = 0; row < ACROSS; row++) {
      long edges = modules.row(row - 1) ^ modules.row(row);
      marked[row] = edges ^ edges << 1;
      count += Long.bitCount(marked[row]);
    }
    SymbolOutline outline = new SymbolOutline(count);
    outline.join(marked);
    return outline.walk();
  }

  private void join(long[] marked) {
    int[] open = new int[ACROSS];
    Arrays.fill(open, NONE);
    for (int row = 0; row < ACROSS; row++) {
      for (long left = marked[row]; left != 0; left &= left - 1) {
        add(Long.numberOfTrailingZeros(left), row, open);
      }
    }
  }

  /**
   * The corners of a row are even in number, and so are those of a column. They are numbered row by
   * row, so that an edge along a row joins an even number and the next.
   */
  private void add(int column, int row, int[] open) {
    int corner = corners++;
    columns[corner] = column;
    rows[corner] = row;
    int above = open[column];
    open[column] = above == NONE ? corner : NONE;
    if (above != NONE) {
      down[corner] = above;
      down[above] = corner;
    }
  }

  private List<int[]> walk() {
    List<int[]> loops = new ArrayList<>();
    boolean[] seen = new boolean[corners];
    for (int start = 0; start < corners; start++) {
      if (!seen[start]) {
        loops.add(loop(start, seen));
      }
    }
    return loops;
  }

  private int[] loop(int start, boolean[] seen) {
    int[] points = new int[2 * corners];
    int used = 0;
    int at = start;
    do {
      int end = at ^ 1;
      used = put(at, points, used);
      used = put(end, points, used);
      seen[at] = true;
      seen[end] = true;
      at = down[end];
    } while (at != start);
    return Arrays.copyOf(points, used);
  }

  private int put(int corner, int[] points, int used) {
    points[used] = columns[corner];
    points[used + 1] = rows[corner];
    return used + 2;
  }
}
