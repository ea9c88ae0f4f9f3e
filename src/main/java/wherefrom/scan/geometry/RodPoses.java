package wherefrom.scan.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Poses round one that has stuck, as they are where a label is wrapped far round a thin rod: its
 * sides are out of sight then, so that neither the frame nor all three finder patterns say how it
 * lies, and the middle alone is taken for a flat label.
 */
public final class RodPoses {
  /** 1 / radius, radius in modules: the symbol goes 110, 135 and 155 degrees round. */
  private static final double[] BENDS = {0.092, 0.112, 0.13};

  /** How far the label is turned about the rod, out of the camera's sight; radians. */
  private static final double MOST_TURN = 0.84;

  private static final int TURNS = 4;

  /** From the place that has stuck to the rod's middle line, in modules. */
  private static final double[] ASIDE = {-5, -2.5, 0, 2.5, 5};

  private static final double[] SIZES = {0.95, 1.06};

  private final CameraModel camera;

  public RodPoses(CameraModel camera) {
    this.camera = camera;
  }

  /** Each stands for all four turns of the tag; the rod runs along v. */
  public List<Pose> round(Pose stuck) {
    List<Pose> poses = new ArrayList<>();
    for (int side = 0; side < 2; side++) {
      double[] along = side(stuck, side);
      double length = Math.hypot(along[0], along[1]);
      double module = length / (2 * Pose.HALF);
      for (double size : SIZES) {
        for (double bend : BENDS) {
          for (double aside : ASIDE) {
            for (int turn = -TURNS; turn <= TURNS; turn++) {
              Rod rod = new Rod(along[0] / length, along[1] / length, module * size, bend, aside);
              Pose pose = pose(stuck, rod, MOST_TURN * turn / TURNS);
              if (pose.isSound()) {
                poses.add(pose);
              }
            }
          }
        }
      }
    }
    return poses;
  }

  /**
   * A rod.
   *
   * @param cosine of its direction on the picture
   * @param sine of it
   * @param module seen where it is nearest, in pixels
   * @param aside from the place that has stuck to its middle line, in modules
   */
  private record Rod(double cosine, double sine, double module, double bend, double aside) {}

  /** One side of the symbol: 0 that along v, 1 that along u. */
  private static double[] side(Pose pose, int which) {
    int from = which == 0 ? 3 : 1;
    int other = which == 0 ? 1 : 3;
    return new double[] {
      (pose.x(from) - pose.x(0) + pose.x(2) - pose.x(other)) / 2,
      (pose.y(from) - pose.y(0) + pose.y(2) - pose.y(other)) / 2
    };
  }

  /** The tag on the rod, turned about it; lengths are in modules, the camera looks along z. */
  private Pose pose(Pose stuck, Rod rod, double turn) {
    double cosine = rod.cosine();
    double sine = rod.sine();
    double radius = 1 / rod.bend();
    double near = camera.focal() / rod.module();
    double across = rod.aside() + radius * Math.sin(turn);
    double x = (stuck.centreX() - camera.centreX()) / rod.module() + across * sine;
    double y = (stuck.centreY() - camera.centreY()) / rod.module() - across * cosine;
    double z = near + radius * (1 - Math.cos(turn));
    double[] values = new double[Pose.PARAMETERS];
    for (int corner = 0; corner < 4; corner++) {
      double u = corner == 1 || corner == 2 ? Pose.HALF : -Pose.HALF;
      double v = corner >= 2 ? Pose.HALF : -Pose.HALF;
      double wide = u * Math.cos(turn);
      double scale = camera.focal() / (z + u * Math.sin(turn));
      values[2 * corner] = camera.centreX() + scale * (x + wide * sine + v * cosine);
      values[2 * corner + 1] = camera.centreY() + scale * (y - wide * cosine + v * sine);
    }
    values[Pose.BEND] = rod.bend();
    return new Pose(values);
  }
}
