package wherefrom.drawing;

import java.util.List;

/**
 * Bearings seen from below and from the end. The middle of an end view lies between the halves,
 * which are parted by the gap; the cap is always below. Measures of an end view are in its radius.
 */
final class BearingShapes {
  static final double BAND = 0.28;

  /** How far each half is moved from the middle in the drawing of the engine. */
  static final double GAP = 0.22;

  private static final double ROD_HALF = 1.28;
  private static final double MAIN_HALF = 1.22;

  private final ShapeCollector out;

  BearingShapes(ShapeCollector out) {
    this.out = out;
  }

  /** The main cap on the crank, seen from below, with two bolts. */
  void mainCapPlan(double x, double y, double pitch) {
    double w = 0.165 * pitch;
    double h = 0.40 * pitch;
    double c = 0.05 * pitch;
    out.outline(
        Pen.round(
            List.of(
                new Point(x - w + c, y - h),
                new Point(x + w - c, y - h),
                new Point(x + w, y - h + c),
                new Point(x + w, y + h - c),
                new Point(x + w - c, y + h),
                new Point(x - w + c, y + h),
                new Point(x - w, y + h - c),
                new Point(x - w, y - h + c))),
        Role.BODY);
    for (int side : new int[] {-1, 1}) {
      double bolt = y + side * (h - 0.115 * pitch);
      out.disc(x, bolt, 0.085 * pitch, Role.LINE);
      out.hexagon(x, bolt, 0.058 * pitch, Role.FASTENER);
    }
  }

  /** The two flanges of the main that takes the thrust. */
  void thrustFlanges(double x, double y, double pitch) {
    for (int side : new int[] {-1, 1}) {
      double middle = x + side * (0.165 + 0.020) * pitch;
      out.slab(middle - 0.014 * pitch, y - 0.13 * pitch, 0.028 * pitch, 0.26 * pitch, Role.BODY);
    }
  }

  /** A rod's cap on its pin, seen from below. */
  void rodCapPlan(Point at, double pitch, double half) {
    double w = half * pitch;
    double h = 0.26 * pitch;
    double x = at.x();
    double y = at.y();
    double side = 0.17 * pitch;
    Pen pen = Pen.at(x - w, y - side).quad(x - w, y - h, x, y - h);
    pen.quad(x + w, y - h, x + w, y - side).toY(y + side).quad(x + w, y + h, x, y + h);
    pen.quad(x - w, y + h, x - w, y + side).close();
    out.outline(pen, Role.BODY);
    for (int end : new int[] {-1, 1}) {
      out.hexagon(x, y + end * (h - 0.085 * pitch), 0.055 * pitch, Role.FASTENER);
    }
  }

  /** Half a shell; y is where the halves meet. */
  void shell(double x, double y, double r, boolean upper) {
    double inner = r - BAND * r;
    out.outline(
        Pen.at(x - r, y)
            .arc(r, r, upper, x + r, y)
            .toX(x + inner)
            .arc(inner, inner, !upper, x - inner, y)
            .close(),
        Role.BODY);
  }

  void upperShell(Point at, double r, double gap) {
    shell(at.x(), at.y() - gap * r, r, true);
  }

  void lowerShell(Point at, double r, double gap) {
    shell(at.x(), at.y() + gap * r, r, false);
  }

  /** The block's half of a main, square. */
  void block(Point at, double r, double gap, Role role) {
    double w = MAIN_HALF * r;
    Pen pen = opening(at.x(), at.y() - gap * r, r, w, true);
    out.outline(pen.toY(at.y() - gap * r - 1.26 * r).toX(at.x() - w).close(), role);
  }

  /** The other half of a split case, its opening above. */
  void caseHalf(Point at, double r, double gap, Role role) {
    double w = MAIN_HALF * r;
    double edge = at.y() + gap * r;
    Pen pen = opening(at.x(), edge, r, w, false).toY(edge + 1.26 * r).toX(at.x() - w);
    out.outline(pen.close(), role);
  }

  /** The rod's half of its big end: a fork. */
  void fork(Point at, double r, double gap, Role role) {
    double w = ROD_HALF * r;
    double x = at.x();
    double a = at.y() - gap * r;
    Pen pen = opening(x, a, r, w, true).toY(a - 0.42 * r);
    pen.quad(x + 0.9 * r, a - 1.2 * r, x + 0.34 * r, a - 1.30 * r).toX(x - 0.34 * r);
    out.outline(pen.quad(x - 0.9 * r, a - 1.2 * r, x - w, a - 0.42 * r).close(), role);
  }

  void rodCap(Point at, double r, double gap) {
    cap(at, r, gap, ROD_HALF, 1.28, 1.16);
  }

  void mainCap(Point at, double r, double gap) {
    cap(at, r, gap, MAIN_HALF, 1.26, 1.10);
  }

  private void cap(Point at, double r, double gap, double half, double deep, double shoulder) {
    double w = half * r;
    double x = at.x();
    double b = at.y() + gap * r;
    Pen pen = opening(x, b, r, w, false).toY(b + 0.40 * r).toX(x + shoulder * r);
    pen.quad(x + 0.95 * r, b + deep * r, x, b + deep * r);
    pen.quad(x - 0.95 * r, b + deep * r, x - shoulder * r, b + 0.40 * r).toX(x - w).close();
    out.outline(pen, Role.BODY);
    for (int side : new int[] {-1, 1}) {
      double bolt = x + side * (w - 0.10 * r);
      out.slab(bolt - 0.11 * r, b + 0.40 * r, 0.22 * r, 0.26 * r, Role.FASTENER);
    }
  }

  private static Pen opening(double x, double y, double r, double w, boolean upper) {
    return Pen.at(x - w, y).toX(x - r).arc(r, r, upper, x + r, y).toX(x + w);
  }
}
