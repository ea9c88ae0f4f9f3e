package wherefrom.scan.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Poses round one that has stuck: splashes and shadows hold a fit fast a module or two beside its
 * place, and a start from elsewhere comes free.
 */
public final class Nudges {
  private static final double SHIFT = 1.6;
  private static final double STRETCH = 0.08;
  private static final double[] BENDS = {0.04, 0.08};

  private Nudges() {}

  /** Moved, stretched and turned a little; then bent both ways. */
  public static List<Pose> round(Pose pose, double reach) {
    List<Pose> nudged = new ArrayList<>();
    for (int sign = -1; sign <= 1; sign += 2) {
      nudged.add(moved(pose, sign * SHIFT, 0, 0, 0, 0));
      nudged.add(moved(pose, 0, sign * SHIFT, 0, 0, 0));
      nudged.add(moved(pose, 0, 0, sign * STRETCH, sign * STRETCH, 0));
      nudged.add(moved(pose, 0, 0, sign * STRETCH, 0, 0));
      nudged.add(moved(pose, 0, 0, 0, sign * STRETCH, 0));
      nudged.add(moved(pose, 0, 0, 0, 0, sign * STRETCH));
    }
    if (!pose.isBent()) {
      for (double bend : BENDS) {
        nudged.add(pose.bent(bend, 0, reach));
        nudged.add(pose.bent(bend, 1, reach));
      }
    }
    nudged.removeIf(one -> !one.isSound());
    return nudged;
  }

  /** Every corner goes where the change in the tag's own plane takes it. */
  private static Pose moved(
      Pose pose, double right, double down, double wider, double higher, double turn) {
    double[] values = pose.values().clone();
    Homography flat = new Homography(Pose.HALF);
    flat.set(
        values[0], values[1], values[2], values[3], values[4], values[5], values[6], values[7]);
    for (int corner = 0; corner < 4; corner++) {
      double u = corner == 1 || corner == 2 ? Pose.HALF : -Pose.HALF;
      double v = corner >= 2 ? Pose.HALF : -Pose.HALF;
      double toU = u * (1 + wider) - v * turn + right;
      double toV = v * (1 + higher) + u * turn + down;
      values[2 * corner] = flat.x(toU, toV);
      values[2 * corner + 1] = flat.y(toU, toV);
    }
    return new Pose(values);
  }
}
