package wherefrom.scan.geometry;

import java.util.List;
import wherefrom.job.reader.Corner;

/**
 * How a tag lies on the picture: where the symbol's corners would be if the tag were flat, and how
 * it is bent round a rod. Places on the tag are in modules from the symbol's centre, u to the right
 * and v down.
 */
public final class Pose {
  /** From the symbol's centre to its edge, in modules. */
  public static final double HALF = 10.5;

  /** Eight numbers for the corners, then bend and axis. */
  static final int PARAMETERS = 10;

  static final int BEND = 8;
  static final int AXIS = 9;

  private final double[] values;

  Pose(double[] values) {
    this.values = values;
  }

  /** A flat tag whose square from -half to half, in modules, has these corners, clockwise. */
  public static Pose ofSquare(double[] xs, double[] ys, double half) {
    Homography square = Homography.ofSquare(xs, ys, half);
    double[] values = new double[PARAMETERS];
    for (int corner = 0; corner < 4; corner++) {
      double u = corner == 1 || corner == 2 ? HALF : -HALF;
      double v = corner >= 2 ? HALF : -HALF;
      values[2 * corner] = square.x(u, v);
      values[2 * corner + 1] = square.y(u, v);
    }
    return new Pose(values);
  }

  /** A flat tag seen without perspective: its centre and what one module right and down is. */
  public static Pose ofAxes(double x, double y, double[] right, double[] down) {
    double[] values = new double[PARAMETERS];
    for (int corner = 0; corner < 4; corner++) {
      double u = corner == 1 || corner == 2 ? HALF : -HALF;
      double v = corner >= 2 ? HALF : -HALF;
      values[2 * corner] = x + u * right[0] + v * down[0];
      values[2 * corner + 1] = y + u * right[1] + v * down[1];
    }
    return new Pose(values);
  }

  double[] values() {
    return values;
  }

  /** The same place on the picture, with the tag turned by quarters clockwise. */
  public Pose turned(int quarters) {
    double[] turned = values.clone();
    for (int corner = 0; corner < 4; corner++) {
      int to = (corner + 4 - quarters) % 4;
      turned[2 * to] = values[2 * corner];
      turned[2 * to + 1] = values[2 * corner + 1];
    }
    turned[AXIS] -= quarters * Math.PI / 2;
    return new Pose(turned);
  }

  /**
   * A bent tag whose square from -reach to reach is seen where the flat one's was.
   *
   * @param bend 1 / radius of the rod, radius in modules
   * @param quarter 0 when the rod's axis runs along v, 1 when it runs along u
   */
  public Pose bent(double bend, int quarter, double reach) {
    double angle = Math.min(reach * bend, Math.PI / 2);
    double stretch = reach * bend / Math.sin(angle);
    Homography flat = new Homography(HALF);
    flat.set(
        values[0], values[1], values[2], values[3], values[4], values[5], values[6], values[7]);
    double[] bent = values.clone();
    for (int corner = 0; corner < 4; corner++) {
      double u = (corner == 1 || corner == 2 ? HALF : -HALF) * (quarter == 0 ? stretch : 1);
      double v = (corner >= 2 ? HALF : -HALF) * (quarter == 1 ? stretch : 1);
      bent[2 * corner] = flat.x(u, v);
      bent[2 * corner + 1] = flat.y(u, v);
    }
    bent[BEND] = bend;
    bent[AXIS] = quarter * Math.PI / 2;
    return new Pose(bent);
  }

  public boolean isBent() {
    return values[BEND] > 1e-4;
  }

  /** Corner of the symbol, flat, in pixels; 0 is its top left, then clockwise. */
  public double x(int corner) {
    return values[2 * corner];
  }

  public double y(int corner) {
    return values[2 * corner + 1];
  }

  public double centreX() {
    return (values[0] + values[2] + values[4] + values[6]) / 4;
  }

  public double centreY() {
    return (values[1] + values[3] + values[5] + values[7]) / 4;
  }

  /** Area of the flat symbol in pixels; negative when it is seen from behind. */
  public double area() {
    double twice = 0;
    for (int corner = 0; corner < 4; corner++) {
      int next = (corner + 1) % 4;
      twice += x(corner) * y(next) - x(next) * y(corner);
    }
    return twice / 2;
  }

  /** Side of a module in pixels, from the area. */
  public double module() {
    return Math.sqrt(Math.abs(area())) / (2 * HALF);
  }

  /** Side of a module in pixels along the shorter diagonal: how small it gets by tilting. */
  public double narrowModule() {
    double longest = 0;
    for (int corner = 0; corner < 4; corner++) {
      longest = Math.max(longest, squared(corner, (corner + 1) % 4));
      longest = Math.max(longest, squared(corner, (corner + 2) % 4) / 2);
    }
    return longest == 0 ? 0 : Math.abs(area()) / Math.sqrt(longest) / (2 * HALF);
  }

  /** The square of the distance between two corners. */
  private double squared(int one, int other) {
    double across = x(other) - x(one);
    double along = y(other) - y(one);
    return across * across + along * along;
  }

  /** Convex, seen from the front, and of a size that can be read. */
  public boolean isSound() {
    for (int corner = 0; corner < 4; corner++) {
      int next = (corner + 1) % 4;
      int last = (corner + 2) % 4;
      double ax = x(next) - x(corner);
      double ay = y(next) - y(corner);
      double bx = x(last) - x(next);
      double by = y(last) - y(next);
      if (!(ax * by - ay * bx > 1)) {
        return false;
      }
    }
    return module() > 0.8;
  }

  /** The corners as seen, bend included, clockwise from the symbol's top left. */
  public List<Corner> corners(CameraModel camera) {
    Projection projection = new Projection(camera);
    projection.set(values);
    return List.of(
        projection.corner(-HALF, -HALF),
        projection.corner(HALF, -HALF),
        projection.corner(HALF, HALF),
        projection.corner(-HALF, HALF));
  }
}
