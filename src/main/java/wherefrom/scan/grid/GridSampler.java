package wherefrom.scan.grid;

import wherefrom.parts.SymbolLayout;
import wherefrom.scan.geometry.CameraModel;
import wherefrom.scan.geometry.Pose;
import wherefrom.scan.geometry.Projection;
import wherefrom.scan.geometry.Warp;
import wherefrom.scan.grey.Level;
import wherefrom.scan.grey.Pyramid;

/** Takes the grey value of every module of a tag at a known pose and makes soft values of them. */
public final class GridSampler {
  /** One module of the quiet zone on each side is taken along. */
  static final int SIDE = SymbolLayout.SIZE + 2;

  private static final double[] SPOT_U = {0, -0.25, 0.25, -0.25, 0.25};
  private static final double[] SPOT_V = {0, -0.25, -0.25, 0.25, 0.25};

  private final Projection projection;
  private final float[] grey = new float[SIDE * SIDE];
  private final float[] sharpened = new float[SIDE * SIDE];
  private final Contrast contrast = new Contrast();

  public GridSampler(CameraModel camera) {
    projection = new Projection(camera);
  }

  /** The soft values at a pose, undone of so much blur as brings the known modules out best. */
  public SoftGrid sample(Pyramid pyramid, Pose pose) {
    return sample(pyramid, pose, new Warp());
  }

  /** The same where the paper lies beside its pose. */
  public SoftGrid sample(Pyramid pyramid, Pose pose, Warp warp) {
    take(pyramid.withAtLeast(2.0, pose.narrowModule()), pose, warp);
    SoftGrid best = contrast.grid(grey);
    for (double strength = 0.15; strength < 0.8; strength += 0.2) {
      sharpen(strength);
      SoftGrid next = contrast.grid(sharpened);
      if (next.fixedAgreement() <= best.fixedAgreement()) {
        break;
      }
      best = next;
    }
    return best;
  }

  private void take(Level level, Pose pose, Warp warp) {
    projection.set(pose);
    for (int row = 0; row < SIDE; row++) {
      for (int column = 0; column < SIDE; column++) {
        float sum = 0;
        warp.at(column - 11, row - 11);
        double u = column - 11 + warp.offsetU();
        double v = row - 11 + warp.offsetV();
        for (int spot = 0; spot < SPOT_U.length; spot++) {
          projection.project(u + SPOT_U[spot], v + SPOT_V[spot]);
          sum += level.at(projection.x(), projection.y());
        }
        grey[row * SIDE + column] = sum / SPOT_U.length;
      }
    }
  }

  /** Takes part of each neighbour away again. */
  private void sharpen(double strength) {
    for (int row = 0; row < SIDE; row++) {
      for (int column = 0; column < SIDE; column++) {
        int at = row * SIDE + column;
        float above = grey[row > 0 ? at - SIDE : at];
        float below = grey[row < SIDE - 1 ? at + SIDE : at];
        float left = grey[column > 0 ? at - 1 : at];
        float right = grey[column < SIDE - 1 ? at + 1 : at];
        double around = (above + below + left + right) / 4;
        sharpened[at] = (float) (grey[at] + 2 * strength * (grey[at] - around));
      }
    }
  }
}
