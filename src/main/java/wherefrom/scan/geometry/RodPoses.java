package wherefrom.scan.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Poses of a label that is wrapped far round a thin rod: its sides are out of sight then, so that
 * neither the frame nor all three finder patterns say how it lies, and the middle alone is taken
 * for a flat label. They are taken round a pose that has stuck, round one finder pattern, or
 * between two lines of the frame that cross the rod.
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

  /** From the symbol's middle to that of a finder pattern, in modules. */
  private static final double FINDER = 7;

  /** How far aside a finder pattern that was found may look, in radians, in steps. */
  private static final double[] LOOKS = {-1, -0.75, -0.5, -0.25, 0, 0.25, 0.5, 0.75, 1};

  /** By how much more or less aside than its narrowness says. */
  private static final double UNSURE = 0.42;

  /** Labels turned more than so show too little; in radians. */
  private static final double LAST_TURN = 1;

  private static final double[] FACE_SIZES = {0.97, 1.05};

  /** The symbol goes 135 and 155 degrees round; from less a start is pulled to a flatter label. */
  private static final double[] FACE_BENDS = {0.112, 0.13};

  /** The frame is seen where it crosses the rod's outline, farther away than the rod's middle. */
  private static final double[] SPAN_SIZES = {1, 1.05};

  /** Nearer together than elsewhere: what is a module off sticks to the next row. */
  private static final int SPAN_TURNS = 8;

  private static final double ROUGH_SIZE = 1.02;
  private static final double ROUGH_BEND = 0.12;

  /** A line's end in the shade is not seen, so its middle may lie a little aside. */
  private static final double[] SPAN_ASIDE = {-1.3, 0, 1.3};

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
          Rod rod = new Rod(along[0] / length, along[1] / length, module * size, bend);
          for (double aside : ASIDE) {
            double x = (stuck.centreX() - camera.centreX()) / rod.module();
            double y = (stuck.centreY() - camera.centreY()) / rod.module();
            turned(rod.aside(x, y, aside), rod, TURNS, poses);
          }
        }
      }
    }
    return poses;
  }

  /** The same where the frame crosses a rod twice. */
  public List<Pose> round(RodSpan span) {
    List<Pose> poses = new ArrayList<>();
    for (double size : SPAN_SIZES) {
      for (double bend : FACE_BENDS) {
        for (double aside : SPAN_ASIDE) {
          turned(span, size, bend, aside, SPAN_TURNS, poses);
        }
      }
    }
    return poses;
  }

  /** A few of them, by which to tell whether a label may lie there. */
  public List<Pose> roughly(RodSpan span) {
    List<Pose> poses = new ArrayList<>();
    turned(span, ROUGH_SIZE, ROUGH_BEND, 0, TURNS, poses);
    return poses;
  }

  private void turned(
      RodSpan span, double size, double bend, double aside, int turns, List<Pose> poses) {
    double module = span.module() * size;
    Rod rod = new Rod(Math.cos(span.direction()), Math.sin(span.direction()), module, bend);
    double x = (span.x() - camera.centreX()) / module;
    double y = (span.y() - camera.centreY()) / module;
    turned(rod.aside(x, y, aside), rod, turns, poses);
  }

  private void turned(double[] middle, Rod rod, int turns, List<Pose> poses) {
    for (int turn = -turns; turn <= turns; turn++) {
      add(poses, pose(middle, rod, MOST_TURN * turn / turns));
    }
  }

  /** The same round a finder pattern in any corner: each stands for all four turns of the tag. */
  public List<Pose> round(FinderFace face) {
    List<Pose> poses = new ArrayList<>();
    double aside = Math.acos(Math.min(1, face.narrow()));
    for (double look : LOOKS) {
      if (Math.abs(Math.abs(look) - aside) < UNSURE) {
        round(face, look, poses);
      }
    }
    return poses;
  }

  private void round(FinderFace face, double look, List<Pose> poses) {
    for (double size : FACE_SIZES) {
      for (double bend : FACE_BENDS) {
        double module = face.module() * size;
        double near = camera.focal() / module - (1 - Math.cos(look)) / bend;
        double cosine = Math.cos(face.direction());
        double sine = Math.sin(face.direction());
        Rod rod = new Rod(cosine, sine, camera.focal() / near, bend);
        double x = (face.x() - camera.centreX()) / module;
        double y = (face.y() - camera.centreY()) / module;
        double[] middle = rod.aside(x, y, -Math.sin(look) / bend);
        for (int corner = 0; corner < 4; corner++) {
          double v = corner < 2 ? -FINDER : FINDER;
          double turn = look - (corner % 2 == 0 ? -FINDER : FINDER) * bend;
          if (Math.abs(turn) < LAST_TURN) {
            add(
                poses,
                pose(new double[] {middle[0] - v * cosine, middle[1] - v * sine}, rod, turn));
          }
        }
      }
    }
  }

  private static void add(List<Pose> poses, Pose pose) {
    if (pose.isSound()) {
      poses.add(pose);
    }
  }

  /**
   * A rod.
   *
   * @param cosine of its direction on the picture
   * @param sine of it
   * @param module seen where it is nearest, in pixels
   */
  private record Rod(double cosine, double sine, double module, double bend) {
    /** The place so many modules aside. */
    double[] aside(double x, double y, double modules) {
      return new double[] {x + modules * sine, y - modules * cosine};
    }
  }

  /** One side of the symbol: 0 that along v, 1 that along u. */
  private static double[] side(Pose pose, int which) {
    int from = which == 0 ? 3 : 1;
    int other = which == 0 ? 1 : 3;
    return new double[] {
      (pose.x(from) - pose.x(0) + pose.x(2) - pose.x(other)) / 2,
      (pose.y(from) - pose.y(0) + pose.y(2) - pose.y(other)) / 2
    };
  }

  /**
   * The tag on the rod, turned about it; lengths are in modules, the camera looks along z.
   *
   * @param middle the place on the rod's middle line, seen where it is nearest, beside which it is
   */
  private Pose pose(double[] middle, Rod rod, double turn) {
    double cosine = rod.cosine();
    double sine = rod.sine();
    double radius = 1 / rod.bend();
    double near = camera.focal() / rod.module();
    double[] centre = rod.aside(middle[0], middle[1], radius * Math.sin(turn));
    double z = near + radius * (1 - Math.cos(turn));
    double[] values = new double[Pose.PARAMETERS];
    for (int corner = 0; corner < 4; corner++) {
      double u = corner == 1 || corner == 2 ? Pose.HALF : -Pose.HALF;
      double v = corner >= 2 ? Pose.HALF : -Pose.HALF;
      double wide = u * Math.cos(turn);
      double scale = camera.focal() / (z + u * Math.sin(turn));
      values[2 * corner] = camera.centreX() + scale * (centre[0] + wide * sine + v * cosine);
      values[2 * corner + 1] = camera.centreY() + scale * (centre[1] - wide * cosine + v * sine);
    }
    values[Pose.BEND] = rod.bend();
    return new Pose(values);
  }
}
