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
      for (int run = runs.firstOf(row); run < runs.firstOf(row + 1); run++) {
        parent[run] = run;
        next[run] = -1;
        rowOf[run] = row;
        left[run] = runs.start(run);
        right[run] = runs.end(run);
        top[run] = row;
      }
      if (row > 0) {
        joinRow(runs, row);
      }
    }
    return collect(runs, smallest);
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
    int above = runs.firstOf(row - 1);
    int aboveEnd = runs.firstOf(row);
    for (int run = aboveEnd; run < runs.firstOf(row + 1); run++) {
      int slack = runs.dark(run) ? 1 : 0;
      while (above < aboveEnd && runs.end(above) + 1 <= runs.start(run)) {
        above++;
      }
      for (int other = Math.max(runs.firstOf(row - 1), above - 1);
          other < aboveEnd && runs.start(other) < runs.end(run) + slack;
          other++) {
        if (runs.dark(other) == runs.dark(run) && runs.end(other) + slack > runs.start(run)) {
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
  }

  private List<Component> collect(Runs runs, int smallest) {
    Arrays.fill(last, 0, runs.count(), -1);
    for (int run = 0; run < runs.count(); run++) {
      int root = root(run);
      if (last[root] >= 0) {
        next[last[root]] = run;
      }
      last[root] = run;
      bottom[root] = rowOf[run];
    }
    List<Component> found = new ArrayList<>();
    for (int run = 0; run < runs.count(); run++) {
      boolean wide = right[run] - left[run] >= smallest;
      if (parent[run] == run && wide && bottom[run] - top[run] + 1 >= smallest) {
        found.add(component(runs, run));
      }
    }
    return found;
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
