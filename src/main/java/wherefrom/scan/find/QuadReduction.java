package wherefrom.scan.find;

import java.util.Optional;

/**
 * The four-sided figure round a convex polygon: sides are dropped one after the other, always the
 * one whose neighbours meet with the least area added. Torn and rounded corners come back this way.
 */
final class QuadReduction {
  private double[] xs;
  private double[] ys;
  private int count;

  private QuadReduction(Polygon hull) {
    count = hull.size();
    xs = new double[count];
    ys = new double[count];
    for (int corner = 0; corner < count; corner++) {
      xs[corner] = hull.x(corner);
      ys[corner] = hull.y(corner);
    }
  }

  static Optional<Polygon> of(Polygon hull) {
    QuadReduction reduction = new QuadReduction(hull);
    while (reduction.count > 4) {
      if (!reduction.dropSide()) {
        return Optional.empty();
      }
    }
    return reduction.count == 4
        ? Optional.of(new Polygon(reduction.xs, reduction.ys))
        : Optional.empty();
  }

  private boolean dropSide() {
    double least = Double.POSITIVE_INFINITY;
    int side = -1;
    double bestX = 0;
    double bestY = 0;
    for (int at = 0; at < count; at++) {
      int before = (at + count - 1) % count;
      int after = (at + 1) % count;
      int last = (at + 2) % count;
      double ax = xs[at] - xs[before];
      double ay = ys[at] - ys[before];
      double bx = xs[after] - xs[last];
      double by = ys[after] - ys[last];
      double cross = ax * by - ay * bx;
      double dx = xs[after] - xs[at];
      double dy = ys[after] - ys[at];
      double along = cross == 0 ? -1 : (dx * by - dy * bx) / cross;
      double back = cross == 0 ? -1 : (dx * ay - dy * ax) / cross;
      if (dx == 0 && dy == 0) {
        along = 0;
        back = 0;
      }
      if (along >= 0 && back >= 0) {
        double added = Math.abs(along * (ax * dy - ay * dx)) / 2;
        if (added < least) {
          least = added;
          side = at;
          bestX = xs[at] + along * ax;
          bestY = ys[at] + along * ay;
        }
      }
    }
    if (side >= 0) {
      replace(side, bestX, bestY);
    }
    return side >= 0;
  }

  /** The side from this corner to the next shrinks to one corner. */
  private void replace(int side, double x, double y) {
    int gone = (side + 1) % count;
    xs[side] = x;
    ys[side] = y;
    double[] fewerX = new double[count - 1];
    double[] fewerY = new double[count - 1];
    int to = 0;
    for (int at = 0; at < count; at++) {
      if (at != gone) {
        fewerX[to] = xs[at];
        fewerY[to++] = ys[at];
      }
    }
    xs = fewerX;
    ys = fewerY;
    count--;
  }
}
