package wherefrom.drawing;

/** Pistons, rods, shells, caps and cam bearings seen from the end, each in a box. */
final class BottomEndShapes {
  /** Radius of a big end's bore, in its width over the bolts: rod, shells and cap share it. */
  static final double BORE = 0.34;

  private static final double MAIN_BORE = 0.33;

  private final ShapeCollector out;

  BottomEndShapes(ShapeCollector out) {
    this.out = out;
  }

  void piston(Bounds box) {
    double x = box.x();
    double y = box.y();
    double w = box.width();
    double h = box.height();
    Pen pen = Pen.at(x, y).toX(x + w).toY(y + 0.52 * h).to(x + 0.97 * w, y + h);
    pen.toX(x + 0.72 * w).quad(x + 0.70 * w, y + 0.80 * h, x + 0.5 * w, y + 0.80 * h);
    pen.quad(x + 0.30 * w, y + 0.80 * h, x + 0.28 * w, y + h).toX(x + 0.03 * w);
    out.outline(pen.to(x, y + 0.52 * h).close(), Role.BODY);
    for (double groove : new double[] {0.12, 0.24, 0.36}) {
      out.slab(x, y + groove * h, w, 0.05 * h, Role.HOLLOW);
    }
    out.disc(box.middleX(), y + 0.60 * h, 0.12 * w, Role.HOLLOW);
    out.disc(box.middleX(), y + 0.60 * h, 0.065 * w, Role.LINE);
  }

  /** Small end up, half the big end down; the box is as wide as the cap over its bolts. */
  void rod(Bounds box) {
    double x = box.middleX();
    double y = box.y();
    double w = box.width();
    double r = 0.15 * w;
    double big = BORE * w;
    double foot = box.bottom();
    double side = foot - 0.20 * w;
    Pen pen = Pen.at(x - r, y + r).arc(r, r, true, x + r, y + r);
    pen.quad(x + r, y + 1.5 * r, x + 0.09 * w, y + 2.1 * r);
    pen.to(x + 0.12 * w, foot - big * 1.30);
    pen.quad(x + 0.24 * w, foot - 1.20 * big, box.right(), side).toY(foot).toX(x + big);
    pen.arc(big, big, false, x - big, foot).toX(box.x()).toY(side);
    pen.quad(x - 0.24 * w, foot - 1.20 * big, x - 0.12 * w, foot - big * 1.30);
    pen.to(x - 0.09 * w, y + 2.1 * r).quad(x - r, y + 1.5 * r, x - r, y + r);
    out.outline(pen.close(), Role.BODY);
    out.disc(x, y + r, r * 0.58, Role.HOLLOW);
  }

  /**
   * Half a shell with its tang.
   *
   * @param least the least thickness of its wall
   */
  void shell(Bounds box, boolean upper, double least) {
    double r = box.width() / 2;
    double h = box.height();
    double wall = Math.max(least, 0.10 * box.width());
    double inner = r - wall;
    double x = box.middleX();
    double y = upper ? box.bottom() : box.y();
    int up = upper ? -1 : 1;
    out.outline(
        Pen.at(x - r, y)
            .arc(r, h, upper, x + r, y)
            .toX(x + inner)
            .arc(inner, h - wall, !upper, x - inner, y)
            .close(),
        Role.BODY);
    double begin = y + up * 0.02 * h;
    double end = begin + up * 0.16 * h;
    double left = x + inner + wall * 0.1;
    out.outline(Pen.at(left, begin).toX(left + wall * 0.8).toY(end).toX(left).close(), Role.HOLLOW);
  }

  void rodCap(Bounds box) {
    double x = box.x();
    double y = box.y();
    double w = box.width();
    double h = box.height();
    Pen pen = opening(box, BORE * w, 0.80).toY(y + 0.34 * h).toX(x + 0.92 * w);
    pen.quad(x + 0.86 * w, y + h, box.middleX(), y + h);
    pen.quad(x + 0.14 * w, y + h, x + 0.08 * w, y + 0.34 * h).toX(x);
    out.outline(pen.close(), Role.BODY);
    for (double bolt : new double[] {0.01, 0.88}) {
      out.slab(x + bolt * w, y + 0.34 * h, 0.11 * w, 0.22 * h, Role.FASTENER);
    }
  }

  void mainCap(Bounds box) {
    double x = box.x();
    double y = box.y();
    double w = box.width();
    double h = box.height();
    Pen pen = opening(box, MAIN_BORE * w, 0.66).toY(y + 0.60 * h).to(x + 0.90 * w, y + h);
    out.outline(pen.toX(x + 0.10 * w).to(x, y + 0.60 * h).close(), Role.BODY);
    for (double bolt : new double[] {0.12, 0.88}) {
      out.slab(x + bolt * w - 0.06 * w, y + 0.80 * h, 0.12 * w, 0.26 * h, Role.FASTENER);
    }
  }

  /** The upper edge with half the bore in it, no deeper than a part of the box. */
  private static Pen opening(Bounds box, double bore, double deepest) {
    double x = box.middleX();
    return Pen.at(box.x(), box.y())
        .toX(x - bore)
        .arc(bore, Math.min(bore, deepest * box.height()), false, x + bore, box.y())
        .toX(box.right());
  }

  /** A whole ring, seen a little from the side. */
  void camBearing(Bounds box) {
    double x = box.x();
    double y = box.y();
    double w = box.width();
    double h = box.height();
    out.outline(
        Pen.at(x + 0.30 * w, y)
            .toX(x + 0.62 * w)
            .arc(0.30 * w, h / 2, true, x + 0.62 * w, y + h)
            .toX(x + 0.30 * w)
            .arc(0.30 * w, h / 2, true, x + 0.30 * w, y)
            .close(),
        Role.BODY);
    ellipse(x + 0.34 * w, y + h / 2, 0.30 * w, h / 2, Role.BODY);
    ellipse(x + 0.34 * w, y + h / 2, 0.22 * w, h * 0.40, Role.HOLLOW);
  }

  private void ellipse(double x, double y, double rx, double ry, Role role) {
    out.outline(
        Pen.at(x - rx, y).arc(rx, ry, true, x + rx, y).arc(rx, ry, true, x - rx, y).close(), role);
  }
}
