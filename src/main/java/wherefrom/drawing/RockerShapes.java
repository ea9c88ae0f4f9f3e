package wherefrom.drawing;

/** Rockers seen from the side, in a box: the cup is over the pushrod, the tip over the valve. */
final class RockerShapes {
  /** Along the box: cup, pivot, tip. */
  static final double CUP = 0.08;

  static final double PIVOT = 0.42;
  static final double TIP = 0.93;

  private final ShapeCollector out;
  private final Bounds box;
  private final double w;
  private final double h;
  private final double middle;

  RockerShapes(ShapeCollector out, Bounds box) {
    this.out = out;
    this.box = box;
    this.w = box.width();
    this.h = box.height();
    this.middle = x(PIVOT);
  }

  private double x(double share) {
    return box.x() + share * w;
  }

  private double y(double share) {
    return box.y() + share * h;
  }

  /**
   * The stud, or the shaft with its stand: no part of the rocker.
   *
   * @param below how far below the box it reaches
   */
  void stand(boolean shaft, double below) {
    double half = (shaft ? 0.060 : 0.028) * w;
    out.slab(middle - half, y(0.30), 2 * half, h * 0.70 + below, Role.STAND);
    if (shaft) {
      out.disc(middle, y(0.44), 0.075 * w, Role.STAND);
    }
  }

  void draw(boolean shaft) {
    if (shaft) {
      bar();
    } else {
      trough();
    }
  }

  /** A bar with a bored boss and an adjusting screw. */
  private void bar() {
    out.slab(x(CUP) - 0.020 * w, y(0.02), 0.040 * w, 0.40 * h, Role.BODY);
    Pen pen = Pen.at(x(0.02), y(0.36)).quad(x(0.02), y(0.28), x(0.10), y(0.28));
    pen.to(middle - 0.13 * w, y(0.26));
    curve(pen, boss(-0.08), 0.08, boss(0.10), 0.08, boss(0.13), 0.26);
    curve(pen, 0.70, 0.30, 0.84, 0.36, 0.93, 0.44);
    curve(pen, 1.0, 0.52, 1.0, 0.80, TIP, 0.86);
    curve(pen, 0.86, 0.88, 0.85, 0.78, 0.84, 0.70);
    curve(pen, 0.72, 0.64, 0.64, 0.64, boss(0.12), 0.66);
    curve(pen, boss(0.08), 0.82, boss(-0.08), 0.82, boss(-0.12), 0.62);
    pen.to(x(0.15), y(0.54));
    curve(pen, 0.14, 0.70, 0.02, 0.70, 0.02, 0.54);
    out.outline(pen.close(), Role.BODY);
    out.disc(middle, y(0.44), 0.105 * w, Role.LINE);
    out.disc(middle, y(0.44), 0.075 * w, Role.HOLLOW);
    out.slab(x(CUP) - 0.038 * w, y(0.14), 0.076 * w, 0.14 * h, Role.FASTENER);
  }

  /** A trough with a half ball and a nut on top. */
  private void trough() {
    out.slab(middle - 0.026 * w, y(-0.02), 0.052 * w, 0.30 * h, Role.HOLLOW);
    Pen pen = Pen.at(x(0.01), y(0.46));
    curve(pen, 0.0, 0.34, 0.08, 0.30, 0.16, 0.30);
    curve(pen, 0.26, 0.28, boss(-0.12), 0.18, boss(0), 0.18);
    curve(pen, boss(0.14), 0.18, 0.76, 0.34, 0.88, 0.38);
    curve(pen, 1.0, 0.42, 1.02, 0.78, TIP, 0.86);
    curve(pen, 0.86, 0.88, 0.86, 0.76, 0.82, 0.70);
    curve(pen, 0.72, 0.60, boss(0.20), 0.76, boss(0), 0.76);
    curve(pen, boss(-0.16), 0.76, 0.20, 0.58, 0.16, 0.62);
    curve(pen, 0.13, 0.76, 0.02, 0.72, 0.01, 0.46);
    out.outline(pen.close(), Role.BODY);
    double ball = 0.13 * w;
    out.outline(
        Pen.at(middle - ball, y(0.30)).arc(ball, 0.30 * h, false, middle + ball, y(0.30)).close(),
        Role.HOLLOW);
    out.slab(middle - 0.062 * w, y(0.05), 0.124 * w, 0.20 * h, 0.012 * w, Role.FASTENER);
    double cup = 0.035 * w;
    out.outline(
        Pen.at(x(CUP) - cup, y(0.655)).arc(cup, 0.05 * h, true, x(CUP) + cup, y(0.655)), Role.LINE);
  }

  private static double boss(double aside) {
    return PIVOT + aside;
  }

  private void curve(Pen pen, double x1, double y1, double x2, double y2, double toX, double toY) {
    pen.cubic(x(x1), y(y1), x(x2), y(y2), x(toX), y(toY));
  }

  /** What a rocker turns on: the half ball with its nut, or the bushing round the shaft. */
  void pivot(boolean shaft) {
    if (shaft) {
      out.disc(middle, y(0.44), 0.105 * w, Role.BODY);
      out.disc(middle, y(0.44), 0.075 * w, Role.HOLLOW);
      return;
    }
    double ball = 0.13 * w;
    out.outline(
        Pen.at(middle - ball, y(0.30)).arc(ball, 0.30 * h, false, middle + ball, y(0.30)).close(),
        Role.BODY);
    out.slab(middle - 0.062 * w, y(0.05), 0.124 * w, 0.20 * h, 0.012 * w, Role.FASTENER);
  }
}
