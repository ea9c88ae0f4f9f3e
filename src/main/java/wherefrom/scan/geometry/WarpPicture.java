package wherefrom.scan.geometry;

import wherefrom.scan.grey.Level;

/**
 * The picture at the places of a {@link WarpTarget} under a warp: how far it is from what it should
 * be once the light around each place is taken out, and how that changes with the warp.
 */
final class WarpPicture {
  private static final int SIDE = WarpTarget.SIDE;

  /** Half the side of the square over which light counts as even, in half modules. */
  private static final int REACH = 8;

  /** Grey values of contrast that are noise. */
  private static final double NOISE = 3;

  private static final double OUTLIER = 0.9;
  private static final int SUMS = 5;

  private final WarpTarget target;
  private final double[] grey = new double[SIDE * SIDE];
  private final double[] slopeU = new double[SIDE * SIDE];
  private final double[] slopeV = new double[SIDE * SIDE];
  private final double[] residual = new double[SIDE * SIDE];
  private final double[][] sums = new double[SUMS][(SIDE + 1) * (SIDE + 1)];
  private final double[] box = new double[SUMS];
  private final float[] spot = new float[3];

  WarpPicture(WarpTarget target) {
    this.target = target;
  }

  void take(Level level, Projection projection, Warp warp) {
    for (int at = 0; at < grey.length; at++) {
      double u = WarpTarget.u(at);
      double v = WarpTarget.v(at);
      warp.at(u, v);
      take(level, projection, u + warp.offsetU(), v + warp.offsetV(), at);
    }
    sum();
    for (int at = 0; at < grey.length; at++) {
      compare(at);
    }
  }

  private void take(Level level, Projection projection, double u, double v, int at) {
    projection.project(u, v);
    double x = projection.x();
    double y = projection.y();
    level.at(x, y, spot);
    grey[at] = spot[0];
    projection.project(u + 0.1, v);
    slopeU[at] = 10 * (spot[1] * (projection.x() - x) + spot[2] * (projection.y() - y));
    projection.project(u, v + 0.1);
    slopeV[at] = 10 * (spot[1] * (projection.x() - x) + spot[2] * (projection.y() - y));
  }

  /** Sums from the upper left corner on, of weights, values, grey and their products. */
  private void sum() {
    int wide = SIDE + 1;
    for (int at = 0; at < grey.length; at++) {
      int to = (at / SIDE + 1) * wide + at % SIDE + 1;
      double weight = target.weight[at] + 1e-3;
      double value = target.value[at];
      for (int kind = 0; kind < SUMS; kind++) {
        double[] sum = sums[kind];
        sum[to] =
            sum[to - 1]
                + sum[to - wide]
                - sum[to - wide - 1]
                + weight * term(kind, value, grey[at]);
      }
    }
  }

  private static double term(int kind, double value, double grey) {
    return switch (kind) {
      case 0 -> 1;
      case 1 -> value;
      case 2 -> grey;
      case 3 -> value * value;
      default -> value * grey;
    };
  }

  private void compare(int at) {
    int top = Math.max(0, at / SIDE - REACH) * (SIDE + 1);
    int bottom = Math.min(SIDE, at / SIDE + REACH + 1) * (SIDE + 1);
    int left = Math.max(0, at % SIDE - REACH);
    int right = Math.min(SIDE, at % SIDE + REACH + 1);
    for (int kind = 0; kind < SUMS; kind++) {
      double[] sum = sums[kind];
      box[kind] = sum[bottom + right] - sum[bottom + left] - sum[top + right] + sum[top + left];
    }
    double value = box[1] / box[0];
    double middle = box[2] / box[0];
    double spread = box[3] / box[0] - value * value;
    double shared = box[4] / box[0] - value * middle;
    double contrast = Math.max(NOISE, spread > 1e-3 ? shared / spread : 0);
    residual[at] = (grey[at] - middle) / contrast - (target.value[at] - value);
    slopeU[at] /= contrast;
    slopeV[at] /= contrast;
  }

  double weight(int at) {
    double share = 1 / (1 + residual[at] * residual[at] / (OUTLIER * OUTLIER));
    return target.weight[at] * share * share;
  }

  double residual(int at) {
    return residual[at];
  }

  double slopeU(int at) {
    return slopeU[at];
  }

  double slopeV(int at) {
    return slopeV[at];
  }
}
