package wherefrom.drawing;

import wherefrom.parts.PartKind;

/** The parts of the valvetrain seen from above. All measures are in bore pitches. */
final class PlanShapes {
  private final ShapeCollector out;
  private final double pitch;

  PlanShapes(ShapeCollector out, double pitch) {
    this.out = out;
    this.pitch = pitch;
  }

  void spring(ValveRow row, double at) {
    Point middle = row.at(at, 0);
    out.disc(middle, 0.165 * pitch, Role.BODY);
    out.disc(middle, 0.135 * pitch, Role.LINE);
    out.disc(middle, 0.10 * pitch, Role.HOLLOW);
    out.disc(middle, 0.042 * pitch, Role.FASTENER);
  }

  /** A trough on a stud, or a bar with a bushing round its shaft. */
  void rocker(ValveRow row, Outward places, boolean shaft) {
    double cup = places.cup();
    double stud = places.stud();
    trough(row, cup, stud, places.valve(), shaft ? 0.078 : 0.092);
    Point pivot = row.at(stud, 0);
    if (shaft) {
      double wide = 0.21 * pitch;
      double high = 0.116 * pitch;
      out.slab(pivot.x() - wide / 2, pivot.y() - high / 2, wide, high, 0.02 * pitch, Role.BODY);
      Point screw = row.at(cup + 0.015, 0);
      out.hexagon(screw.x(), screw.y(), 0.040 * pitch, Role.FASTENER);
    } else {
      out.disc(pivot, 0.062 * pitch, Role.HOLLOW);
      out.hexagon(pivot.x(), pivot.y(), 0.042 * pitch, Role.FASTENER);
      out.disc(row.at(cup, 0), 0.026 * pitch, Role.HOLLOW);
    }
  }

  private void trough(ValveRow row, double cup, double stud, double tip, double middle) {
    double w0 = 0.058 * pitch;
    double w1 = middle * pitch;
    double w2 = 0.05 * pitch;
    Point begin = row.at(cup, -w0);
    Pen pen = Pen.at(begin.x(), begin.y());
    curve(pen, row.at(cup + 0.05, -w0), row.at(stud - 0.10, -w1), row.at(stud, -w1));
    curve(pen, row.at(stud + 0.08, -w1), row.at(tip - 0.09, -w2), row.at(tip, -w2));
    curve(pen, row.at(tip + 0.07, -w2), row.at(tip + 0.07, w2), row.at(tip, w2));
    curve(pen, row.at(tip - 0.09, w2), row.at(stud + 0.08, w1), row.at(stud, w1));
    curve(pen, row.at(stud - 0.10, w1), row.at(cup + 0.05, w0), row.at(cup, w0));
    curve(pen, row.at(cup - 0.075, w0), row.at(cup - 0.075, -w0), begin);
    out.outline(pen.close(), Role.BODY);
  }

  private static void curve(Pen pen, Point one, Point two, Point end) {
    pen.cubic(one.x(), one.y(), two.x(), two.y(), end.x(), end.y());
  }

  /** A tube with a band at its top end, the rocker's. */
  void pushrod(ValveRow row, double lifter, double cup) {
    double half = 0.030 * pitch;
    box(row.y(lifter - 0.008), row.y(cup + 0.008), row.x(), half, half, Role.BODY);
    box(row.y(cup - 0.075), row.y(cup - 0.040), row.x(), half, 0, Role.BAND);
  }

  private void box(double y1, double y2, double x, double half, double round, Role role) {
    out.slab(x - half, Math.min(y1, y2), 2 * half, Math.abs(y1 - y2), round, role);
  }

  void lifter(ValveRow row, double at, boolean roller) {
    Point middle = row.at(at, 0);
    out.disc(middle, 0.098 * pitch, Role.BODY);
    out.disc(middle, 0.066 * pitch, Role.HOLLOW);
    out.disc(middle, 0.034 * pitch, Role.FASTENER);
    if (roller) {
      double half = 0.056 * pitch;
      for (int side : new int[] {-1, 1}) {
        double x = middle.x() + side * 0.080 * pitch;
        out.line(x, middle.y() - half, x, middle.y() + half, Role.LINE);
      }
    }
  }

  /** Pivot, valve, retainer or keepers: drawn only where they are what is asked about. */
  void small(PartKind kind, Point at) {
    switch (kind) {
      case PIVOT -> pair(at, 0.075, 0.045, Role.FASTENER);
      case VALVE -> pair(at, 0.15, 0.042, Role.FASTENER);
      case RETAINER -> pair(at, 0.115, 0.06, Role.HOLLOW);
      case KEEPERS -> keepers(at);
      default -> throw new IllegalArgumentException(kind.word());
    }
  }

  private void pair(Point at, double outer, double inner, Role role) {
    out.disc(at, outer * pitch, Role.BODY);
    out.disc(at, inner * pitch, role);
  }

  private void keepers(Point at) {
    double radius = 0.075 * pitch;
    for (int side : new int[] {-1, 1}) {
      double x = at.x() + side * 0.012 * pitch;
      out.outline(
          Pen.at(x, at.y() - radius).arc(radius, radius, side > 0, x, at.y() + radius).close(),
          Role.BODY);
    }
  }
}
