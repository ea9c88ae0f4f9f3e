package wherefrom.drawing;

import java.util.ArrayList;
import java.util.List;

/** Rings and arrows: here, the right place, the wrong place. */
public final class Pointing {
  /** Half the height of an arrow's head and of its shaft, and the head's length, in its length. */
  private static final double HEAD = 0.39;

  private static final double SHAFT = 0.145;
  private static final double NECK = 0.45;
  private static final double OCTAGON = 62;
  private static final double LEAST_OCTAGON = 44;

  /** It is no larger than so many radii of its ring: it must not hide what it stands beside. */
  private static final double OCTAGON_SHARE = 1.8;

  private Pointing() {}

  /** A black ring in a halo: here, or the right place. */
  public static List<Shape> ring(Point at, double radius, Glass glass) {
    return ring(at, radius, glass, Role.RING);
  }

  private static List<Shape> ring(Point at, double radius, Glass glass, Role role) {
    ShapeCollector out = new ShapeCollector(glass);
    out.disc(at, radius, Role.HALO);
    out.disc(at, radius, role);
    return out.shapes();
  }

  /**
   * A red ring of two lines with the octagon: the wrong place, told from the right one by its shape
   * as well.
   *
   * @param aside where the octagon's middle lies, in radii from the ring's
   */
  public static List<Shape> wrong(Point at, double radius, Point aside, Glass glass) {
    List<Shape> shapes = new ArrayList<>(ring(at, radius, glass, Role.WRONG_RING));
    ShapeCollector gap = new ShapeCollector(glass);
    gap.disc(at, radius, Role.WRONG_GAP);
    shapes.addAll(gap.shapes());
    Point octagon = new Point(at.x() + radius * aside.x(), at.y() + radius * aside.y());
    shapes.addAll(MarkShapes.of(Sign.OTHER, octagon, octagon(radius, glass), glass).shapes());
    return shapes;
  }

  /** The side of the octagon beside a ring. */
  static double octagon(double radius, Glass glass) {
    double liked = Math.min(glass.px(OCTAGON), OCTAGON_SHARE * radius);
    return Math.max(glass.px(LEAST_OCTAGON), liked);
  }

  /** An arrow with its tip at a point. */
  static List<Shape> arrow(Point tip, double from, double length, Glass glass) {
    double[][] corners = {
      {0, 0}, {NECK, HEAD}, {NECK, SHAFT}, {1, SHAFT}, {1, -SHAFT}, {NECK, -SHAFT}, {NECK, -HEAD}
    };
    List<Point> points = new ArrayList<>();
    for (double[] corner : corners) {
      double along = corner[0] * length;
      double across = corner[1] * length;
      points.add(
          new Point(
              tip.x() + along * Math.cos(from) - across * Math.sin(from),
              tip.y() + along * Math.sin(from) + across * Math.cos(from)));
    }
    ShapeCollector out = new ShapeCollector(glass);
    out.outline(Pen.round(points), Role.INK);
    return out.shapes();
  }
}
