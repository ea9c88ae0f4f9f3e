package wherefrom.scan.find;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Runs of one colour that touch, as connected components; light ones touch along edges only. */
final class Components {
  private int[] parent = new int[0];
  private int[] next = new int[0];
  private int[] rowOf = new int[0];
  private int[] left = new int[0];
  private int[] right = new int[0];
  private int[] top = new int[0];
  private int[] last = new int[0];
  private int[] bottom = new int[0];

  /** Joins the runs, then lists components whose box is at least this many pixels on each side. */
  List<Component> join(Runs runs, int height, int smallest) {
    reserve(runs.count());
    for (int row = 0; row < height; row++) {
      begin(runs, row);
      if (row > 0) {
        joinRow(runs, row);
      }
    }
    return collect(runs, smallest);
  }

  /** Each run of a row is a component by itself at first. */
  private void begin(Runs runs, int row) {
    int first = runs.firstOf(row);
    int end = runs.firstOf(row + 1);
    System.arraycopy(runs.starts(), first, left, first, end - first);
    System.arraycopy(runs.ends(), first, right, first, end - first);
    Arrays.fill(rowOf, first, end, row);
    Arrays.fill(top, first, end, row);
    Arrays.fill(bottom, first, end, row);
    for (int run = first; run < end; run++) {
      parent[run] = run;
    }
  }

  private void reserve(int count) {
    if (parent.length < count) {
      int size = count + count / 2;
      parent = new int[size];
      next = new int[size];
      rowOf = new int[size];
      left = new int[size];
      right = new int[size];
      top = new int[size];
      last = new int[size];
      bottom = new int[size];
    }
  }

  private void joinRow(Runs runs, int row) {
    int[] starts = runs.starts();
    int[] ends = runs.ends();
    int first = runs.firstOf(row - 1);
    int aboveEnd = runs.firstOf(row);
    int end = runs.firstOf(row + 1);
    int above = first;
    for (int run = aboveEnd; run < end; run++) {
      boolean isDark = runs.dark(run);
      int slack = isDark ? 1 : 0;
      int from = starts[run];
      int to = ends[run] + slack;
      while (above < aboveEnd && ends[above] + 1 <= from) {
        above++;
      }
      int other = Math.max(first, above - 1);
      if (other < aboveEnd && runs.dark(other) != isDark) {
        other++;
      }
      // dark and light take turns along a row
      for (; other < aboveEnd && starts[other] < to; other += 2) {
        if (ends[other] + slack > from) {
          union(other, run);
        }
      }
    }
  }

  private int root(int run) {
    int at = run;
    while (parent[at] != at) {
      parent[at] = parent[parent[at]];
      at = parent[at];
    }
    return at;
  }

  private void union(int one, int other) {
    int first = root(one);
    int second = root(other);
    if (first == second) {
      return;
    }
    int keep = Math.min(first, second);
    int drop = Math.max(first, second);
    parent[drop] = keep;
    left[keep] = Math.min(left[keep], left[drop]);
    right[keep] = Math.max(right[keep], right[drop]);
    top[keep] = Math.min(top[keep], top[drop]);
    bottom[keep] = Math.max(bottom[keep], bottom[drop]);
  }

  private List<Component> collect(Runs runs, int smallest) {
    int count = runs.count();
    Arrays.fill(last, 0, count, -1);
    Arrays.fill(next, 0, count, -1);
    for (int run = 0; run < count; run++) {
      int root = root(run);
      if (isLarge(root, smallest)) {
        if (last[root] >= 0) {
          next[last[root]] = run;
        }
        last[root] = run;
      }
    }
    List<Component> found = new ArrayList<>();
    for (int run = 0; run < count; run++) {
      if (parent[run] == run && isLarge(run, smallest)) {
        found.add(component(runs, run));
      }
    }
    return found;
  }

  private boolean isLarge(int root, int smallest) {
    return right[root] - left[root] >= smallest && bottom[root] - top[root] + 1 >= smallest;
  }

  private Component component(Runs runs, int root) {
    HullBuilder hull = new HullBuilder();
    int area = 0;
    double momentX = 0;
    double momentY = 0;
    for (int run = root; run >= 0; run = next[run]) {
      hull.add(runs.start(run), runs.end(run), rowOf[run]);
      int length = runs.end(run) - runs.start(run);
      area += length;
      momentX += length * (runs.start(run) + runs.end(run)) / 2.0;
      momentY += length * (rowOf[run] + 0.5);
    }
    Polygon closed = hull.close();
    return new Component(
        runs.dark(root),
        area,
        momentX / area,
        momentY / area,
        closed,
        QuadReduction.toQuad(closed));
  }
}
