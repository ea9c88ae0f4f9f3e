package wherefrom.scan.find;

import java.util.ArrayList;
import java.util.List;

/** Looks for finder patterns along the rows of a cut level and checks each across the rows. */
final class FinderScan {
  private static final int MOST = 24;
  private final List<Finder> found = new ArrayList<>();
  private final List<int[]> hits = new ArrayList<>();
  private Runs runs = new Runs(1, 0);

  /** The first row that was cut, and the row after the last. */
  private int top;

  private int bottom;

  /** Finder patterns in pixels of the whole picture, those seen on most rows first. */
  List<Finder> scan(Runs cut, int rows, int shrink) {
    runs = cut;
    top = 0;
    while (top < rows && cut.firstOf(top + 1) == cut.firstOf(top)) {
      top++;
    }
    bottom = rows;
    while (bottom > top && cut.firstOf(bottom) == cut.firstOf(bottom - 1)) {
      bottom--;
    }
    found.clear();
    hits.clear();
    for (int row = top; row < bottom; row++) {
      for (int run = cut.firstOf(row); run + 4 < cut.firstOf(row + 1); run++) {
        if (cut.dark(run) && across(run)) {
          check(run, row);
        }
      }
    }
    return best(shrink);
  }

  private boolean across(int run) {
    int middle = width(run + 2);
    int left = width(run + 1);
    int right = width(run + 3);
    if (middle < 3 || left * 5 < middle || right * 5 < middle) {
      return false;
    }
    return left <= middle
        && right <= middle
        && isFinder(width(run), left, middle, right, width(run + 4));
  }

  private int width(int run) {
    return runs.end(run) - runs.start(run);
  }

  private static boolean isFinder(int first, int second, int middle, int fourth, int fifth) {
    double module = (first + second + middle + fourth + fifth) / 7.0;
    double slack = 0.55 * module + 0.4;
    return module >= 1.2
        && Math.abs(middle - 3 * module) < 1.6 * slack + 0.4
        && Math.abs(first - module) < slack
        && Math.abs(second - module) < slack
        && Math.abs(fourth - module) < slack
        && Math.abs(fifth - module) < slack;
  }

  private void check(int run, int row) {
    double x = (runs.start(run + 2) + runs.end(run + 2)) / 2.0;
    double module = (runs.end(run + 4) - runs.start(run)) / 7.0;
    for (int at = 0; at < found.size(); at++) {
      Finder known = found.get(at);
      if (Math.abs(known.x() - x) < 1.5 * module && Math.abs(known.y() - row) < 2.5 * module) {
        hits.get(at)[0]++;
        return;
      }
    }
    int[] widths = new int[5];
    int middle = column((int) x, row, (int) (7 * module) + 2, widths);
    boolean finder = isFinder(widths[0], widths[1], widths[2], widths[3], widths[4]);
    if (middle >= 0 && finder) {
      int total = widths[0] + widths[1] + widths[2] + widths[3] + widths[4];
      double down = total / 7.0;
      if (down < 3.2 * module && module < 3.2 * down) {
        double y = middle / 2.0;
        found.add(new Finder(x, y, Math.sqrt(module * down)));
        hits.add(new int[] {1});
      }
    }
  }

  /** The five lengths down a column through a dark middle; gives twice the middle's centre. */
  private int column(int x, int row, int most, int[] widths) {
    int up = row;
    while (up >= top && isDark(x, up) && row - up <= most) {
      up--;
    }
    int down = row + 1;
    while (down < bottom && isDark(x, down) && down - row <= most) {
      down++;
    }
    widths[2] = down - up - 1;
    int twice = up + 1 + down;
    for (int side = 1; side >= 0; side--) {
      boolean dark = side == 0;
      int from = up;
      while (up >= top && isDark(x, up) == dark && from - up <= most) {
        up--;
      }
      widths[side] = from - up;
      from = down;
      while (down < bottom && isDark(x, down) == dark && down - from <= most) {
        down++;
      }
      widths[4 - side] = down - from;
    }
    return widths[2] > 0 ? twice : -1;
  }

  private boolean isDark(int x, int row) {
    int low = runs.firstOf(row);
    int high = runs.firstOf(row + 1) - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (runs.end(middle) <= x) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return runs.dark(low);
  }

  private List<Finder> best(int shrink) {
    List<Integer> order = new ArrayList<>();
    for (int at = 0; at < found.size(); at++) {
      order.add(at);
    }
    order.sort((one, other) -> hits.get(other)[0] - hits.get(one)[0]);
    List<Finder> best = new ArrayList<>();
    for (int at : order.subList(0, Math.min(MOST, order.size()))) {
      Finder finder = found.get(at);
      best.add(new Finder(finder.x() * shrink, finder.y() * shrink, finder.module() * shrink));
    }
    return best;
  }
}
