package wherefrom.scan.geometry;

import java.util.Arrays;
import wherefrom.scan.grey.Level;
import wherefrom.scan.grey.Pyramid;

/**
 * Fits a {@link Warp} by Gauss and Newton's method to what is known of a label: the pattern of
 * every label, and of the data modules what they seem to be, the surer the more. A warp that bends
 * sharply is held against it. Which tags were issued is not known here, so the warp leans to none
 * of them.
 */
public final class WarpFit {
  private static final int UNKNOWNS = 2 * Warp.NODES * Warp.NODES;

  /** Weight of the warp's curvature, and of its size. */
  private static final double STIFF = 14;

  private static final double SMALL = 0.05;

  private final WarpPicture picture;
  private final WarpTarget target;
  private final Projection projection;
  private final double[][] normal = new double[UNKNOWNS][UNKNOWNS];
  private final double[] gradient = new double[UNKNOWNS];
  private final LinearSolver solver = new LinearSolver(UNKNOWNS);

  public WarpFit(LabelPattern pattern, CameraModel camera) {
    target = new WarpTarget(pattern);
    picture = new WarpPicture(target);
    projection = new Projection(camera);
  }

  /**
   * Improves a warp by what the modules seem to be.
   *
   * @param darkness one value for each data module: above 0 dark, below 0 light
   * @param ease times how stiff the paper is taken to be
   */
  public void improve(Pyramid pyramid, Pose pose, Warp warp, float[] darkness, double ease) {
    target.set(darkness);
    Level level = pyramid.withAtLeast(1.8, pose.narrowModule());
    projection.set(pose);
    for (int round = 0; round < 3; round++) {
      picture.take(level, projection, warp);
      equations(warp);
      stiffen(warp.right, 0, ease);
      stiffen(warp.down, UNKNOWNS / 2, ease);
      warp.move(solver.solve(normal, gradient, UNKNOWNS, 1e-3));
    }
  }

  private void equations(Warp warp) {
    for (double[] row : normal) {
      Arrays.fill(row, 0);
    }
    Arrays.fill(gradient, 0);
    for (int at = 0; at < WarpTarget.SIDE * WarpTarget.SIDE; at++) {
      double weight = picture.weight(at);
      if (weight > 0.01) {
        warp.at(WarpTarget.u(at), WarpTarget.v(at));
        add(warp, weight, picture.residual(at), picture.slopeU(at), picture.slopeV(at));
      }
    }
  }

  private void add(Warp warp, double weight, double residual, double slopeU, double slopeV) {
    for (int one = 0; one < 8; one++) {
      int row = warp.node(one % 4) + (one < 4 ? 0 : UNKNOWNS / 2);
      double slope = weight * (one < 4 ? slopeU : slopeV) * warp.share(one % 4);
      gradient[row] -= slope * residual;
      for (int other = 0; other < 8; other++) {
        int column = warp.node(other % 4) + (other < 4 ? 0 : UNKNOWNS / 2);
        if (column <= row) {
          normal[row][column] += slope * (other < 4 ? slopeU : slopeV) * warp.share(other % 4);
        }
      }
    }
  }

  /** Second differences along rows and columns, and the size, as far as they are there already. */
  private void stiffen(double[] values, int from, double ease) {
    int side = Warp.NODES;
    for (int node = 0; node < values.length; node++) {
      normal[from + node][from + node] += SMALL;
      gradient[from + node] -= SMALL * values[node];
      if (node % side > 0 && node % side < side - 1) {
        bend(values, from, node, 1, STIFF * ease);
      }
      if (node / side > 0 && node / side < side - 1) {
        bend(values, from, node, side, STIFF * ease);
      }
    }
  }

  private void bend(double[] values, int from, int node, int step, double weight) {
    double bend = values[node - step] - 2 * values[node] + values[node + step];
    for (int one = -1; one <= 1; one++) {
      double mine = one == 0 ? -2 : 1;
      gradient[from + node + one * step] -= weight * mine * bend;
      for (int other = -1; other <= one; other++) {
        double its = other == 0 ? -2 : 1;
        normal[from + node + one * step][from + node + other * step] += weight * mine * its;
      }
    }
  }
}
