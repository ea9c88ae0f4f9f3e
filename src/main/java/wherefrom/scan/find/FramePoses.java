package wherefrom.scan.find;

import java.util.ArrayList;
import java.util.List;
import wherefrom.scan.geometry.LabelPattern;
import wherefrom.scan.geometry.Pose;

/**
 * Poses that a connected patch suggests as the printed frame, as its white window, or as a piece of
 * the frame with one corner; each stands for all four turns.
 */
final class FramePoses {
  private static final double FILLED = 0.7;

  /** Most of a corner piece's triangle that it may fill: it is two thin arms. */
  private static final double THIN = 0.6;

  private static final double[] SCALES = {0.88, 1, 1.14};

  private final LabelPattern pattern;

  FramePoses(LabelPattern pattern) {
    this.pattern = pattern;
  }

  List<Pose> suggest(Component component, int shrink) {
    List<Pose> poses = new ArrayList<>();
    double half = component.dark() ? pattern.frameHalf() : pattern.windowHalf();
    component
        .quad()
        .filter(quad -> component.hull().area() > FILLED * quad.area())
        .ifPresent(quad -> poses.add(square(quad.scaled(shrink), half)));
    if (component.dark() && pattern.hasFrame()) {
      component
          .quad()
          .flatMap(QuadReduction::toTriangle)
          .filter(triangle -> component.hull().area() > FILLED * triangle.area())
          .filter(triangle -> component.area() < THIN * triangle.area())
          .ifPresent(triangle -> corner(component, triangle, shrink, poses));
    }
    return poses;
  }

  static Pose square(Polygon quad, double half) {
    double[] xs = new double[4];
    double[] ys = new double[4];
    for (int corner = 0; corner < 4; corner++) {
      xs[corner] = quad.x(corner);
      ys[corner] = quad.y(corner);
    }
    return Pose.ofSquare(xs, ys, half);
  }

  /**
   * Two arms of the frame that meet: whole sides, or as long as the frame's thickness says when
   * they are broken off.
   */
  private void corner(Component piece, Polygon triangle, int shrink, List<Pose> poses) {
    int corner = nearest(piece, triangle);
    double x = triangle.x(corner) * shrink;
    double y = triangle.y(corner) * shrink;
    double ax = triangle.x(corner + 1) * shrink - x;
    double ay = triangle.y(corner + 1) * shrink - y;
    double bx = triangle.x(corner + 2) * shrink - x;
    double by = triangle.y(corner + 2) * shrink - y;
    double first = Math.hypot(ax, ay);
    double second = Math.hypot(bx, by);
    double thick = piece.area() * (double) shrink * shrink / (first + second);
    double side = thick * pattern.frameHalf() / pattern.frameWidth() * 2;
    add(poses, x, y, new double[] {ax, ay}, new double[] {bx, by});
    double longer = Math.max(first, second);
    add(poses, x, y, scaled(ax, ay, longer / first), scaled(bx, by, longer / second));
    for (double scale : SCALES) {
      double length = side * scale;
      add(poses, x, y, scaled(ax, ay, length / first), scaled(bx, by, length / second));
    }
  }

  private static double[] scaled(double x, double y, double factor) {
    return new double[] {x * factor, y * factor};
  }

  /** The corner at which the arms meet lies nearest to the piece's centre of area. */
  private static int nearest(Component piece, Polygon triangle) {
    int nearest = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int corner = 0; corner < 3; corner++) {
      double far =
          Math.hypot(triangle.x(corner) - piece.centreX(), triangle.y(corner) - piece.centreY());
      if (far < least) {
        least = far;
        nearest = corner;
      }
    }
    return nearest;
  }

  private void add(List<Pose> poses, double x, double y, double[] a, double[] b) {
    double modules = 2 * pattern.frameHalf();
    double[] right = {a[0] / modules, a[1] / modules};
    double[] down = {b[0] / modules, b[1] / modules};
    poses.add(Pose.ofAxes(x + (a[0] + b[0]) / 2, y + (a[1] + b[1]) / 2, right, down));
  }
}
