package wherefrom.scan.find;

import java.util.Arrays;
import java.util.Optional;

/**
 * The figure of few sides round a convex polygon: sides are dropped one after the other, always the
 * one whose neighbours meet with the least area added. Torn and rounded corners come back this way.
 */
final class QuadReduction {
  private final double[] xs;
  private final double[] ys;

  /** What dropping the side from each corner to the next would add. */
  private final double[] adds;

  private int count;

  private QuadReduction(Polygon hull) {
    count = hull.size();
    xs = new double[count];
    ys = new double[count];
    adds = new double[count];
    for (int corner = 0; corner < count; corner++) {
      xs[corner] = hull.x(corner);
      ys[corner] = hull.y(corner);
    }
    for (int side = 0; side < count; side++) {
      adds[side] = added(side);
    }
  }

  /** With four sides; empty where the sides run so that none can be dropped. */
  static Optional<Polygon> toQuad(Polygon hull) {
    return reduce(hull, 4);
  }

  /** With three sides, of a hull or of the four sides round it. */
  static Optional<Polygon> toTriangle(Polygon hull) {
    return reduce(hull, 3);
  }

  private static Optional<Polygon> reduce(Polygon hull, int sides) {
    if (hull.size() < sides) {
      return Optional.empty();
    }
    QuadReduction reduction = new QuadReduction(hull);
    while (reduction.count > sides) {
      if (!reduction.dropSide()) {
        return Optional.empty();
      }
    }
    return Optional.of(
        new Polygon(Arrays.copyOf(reduction.xs, sides), Arrays.copyOf(reduction.ys, sides)));
  }

  private boolean dropSide() {
    double least = Double.POSITIVE_INFINITY;
    int side = -1;
    for (int at = 0; at < count; at++) {
      if (adds[at] < least) {
        least = adds[at];
        side = at;
      }
    }
    if (side >= 0) {
      drop(side);
    }
    return side >= 0;
  }

  /** How far past a side's first corner its neighbours meet, in lengths of the side before. */
  private double meeting(int at) {
    int before = (at + count - 1) % count;
    int after = (at + 1) % count;
    int last = (at + 2) % count;
    double ax = xs[at] - xs[before];
    double ay = ys[at] - ys[before];
    double bx = xs[after] - xs[last];
    double by = ys[after] - ys[last];
    double dx = xs[after] - xs[at];
    double dy = ys[after] - ys[at];
    if (dx == 0 && dy == 0) {
      return 0;
    }
    double cross = ax * by - ay * bx;
    double along = (dx * by - dy * bx) / cross;
    double back = (dx * ay - dy * ax) / cross;
    return cross != 0 && along >= 0 && back >= 0 ? along : Double.POSITIVE_INFINITY;
  }

  private double added(int at) {
    double along = meeting(at);
    if (Double.isInfinite(along) || along == 0) {
      return along;
    }
    int before = (at + count - 1) % count;
    int after = (at + 1) % count;
    double ax = xs[at] - xs[before];
    double ay = ys[at] - ys[before];
    return along * Math.abs(ax * (ys[after] - ys[at]) - ay * (xs[after] - xs[at])) / 2;
  }

  /** The side from this corner to the next shrinks to one corner. */
  private void drop(int side) {
    double along = meeting(side);
    int before = (side + count - 1) % count;
    xs[side] += along * (xs[side] - xs[before]);
    ys[side] += along * (ys[side] - ys[before]);
    int gone = (side + 1) % count;
    System.arraycopy(xs, gone + 1, xs, gone, count - gone - 1);
    System.arraycopy(ys, gone + 1, ys, gone, count - gone - 1);
    System.arraycopy(adds, gone + 1, adds, gone, count - gone - 1);
    count--;
    int corner = gone == 0 ? count - 1 : side;
    for (int near = corner + count - 2; near <= corner + count + 1; near++) {
      adds[near % count] = added(near % count);
    }
  }
}
