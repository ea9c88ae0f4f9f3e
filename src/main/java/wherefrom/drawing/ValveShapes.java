package wherefrom.drawing;

/** Springs, retainers, keepers and valves seen from the side, each in a box. */
final class ValveShapes {
  private final ShapeCollector out;
  private final double unit;

  ValveShapes(ShapeCollector out, double unit) {
    this.out = out;
    this.unit = unit;
  }

  /** Wire coils with closed ends, the front turns drawn. */
  void spring(Bounds box, int coils) {
    double t = box.height() / (coils * 1.42);
    double end = t * 0.8;
    double wide = 0.92 * box.width();
    double left = box.x() + 0.04 * box.width();
    out.slab(left, box.y(), wide, end, t * 0.4, Role.BODY);
    out.slab(left, box.bottom() - end, wide, end, t * 0.4, Role.BODY);
    double first = box.y() + t * 0.75;
    double step = (box.height() - 2 * t * 0.75) / (coils - 1);
    for (int coil = 0; coil < coils - 1; coil++) {
      coil(box, t, first + coil * step + step * 0.30, step * 0.34);
    }
  }

  private void coil(Bounds box, double t, double top, double slant) {
    double x = box.x();
    double w = box.width();
    double low = top + slant;
    Pen pen = Pen.at(x, low).quad(x - t * 0.3, low + t * 0.5, x + t * 0.3, low + t * 0.86);
    pen.to(x + w - t * 0.1, top + t * 0.72);
    pen.quad(x + w + t * 0.35, top + t * 0.3, x + w - t * 0.2, top - t * 0.02);
    out.outline(pen.close(), Role.BODY);
  }

  void retainer(Bounds box) {
    double x = box.x();
    double y = box.y();
    double w = box.width();
    double h = box.height();
    out.outline(
        Pen.at(x, y + 0.12 * h)
            .toX(x + w)
            .to(x + 0.96 * w, y + 0.42 * h)
            .toX(x + 0.74 * w)
            .to(x + 0.66 * w, y + h)
            .toX(x + 0.34 * w)
            .to(x + 0.26 * w, y + 0.42 * h)
            .toX(x + 0.04 * w)
            .close(),
        Role.BODY);
    out.outline(
        Pen.at(x + 0.40 * w, y + 0.12 * h)
            .to(x + 0.44 * w, y + h)
            .toX(x + 0.56 * w)
            .to(x + 0.60 * w, y + 0.12 * h)
            .close(),
        Role.HOLLOW);
  }

  /** Two wedges that hold the retainer on the stem. */
  void keepers(Bounds box) {
    double[][] halves = {{0.08, 0.46, 0.46, 0.18}, {0.92, 0.54, 0.54, 0.82}};
    double y = box.y();
    double h = box.height();
    for (double[] half : halves) {
      double outer = box.x() + half[0] * box.width();
      double inner = box.x() + half[1] * box.width();
      out.outline(
          Pen.at(outer, y).toX(inner).toY(y + h).toX(box.x() + half[3] * box.width()).close(),
          Role.BODY);
      double bead = box.x() + (half[0] * 0.86 + 0.07) * box.width();
      out.line(bead, y + 0.3 * h, inner, y + 0.3 * h, Role.LINE);
    }
  }

  /** Stem up, head down. */
  void valve(Bounds box) {
    double x = box.x();
    double y = box.y();
    double w = box.width();
    double h = box.height();
    double middle = box.middleX();
    double t = Math.max(3 * unit, 0.075 * w);
    double margin = Math.max(3 * unit, 0.028 * h);
    double rim = y + h - margin;
    Pen pen = Pen.at(middle - t, y).toX(middle + t).toY(y + 0.60 * h);
    pen.cubic(middle + t, y + 0.82 * h, x + 0.78 * w, y + 0.90 * h, x + w, rim);
    pen.toY(y + h).toX(x).toY(rim);
    pen.cubic(x + 0.22 * w, y + 0.90 * h, middle - t, y + 0.82 * h, middle - t, y + 0.60 * h);
    out.outline(pen.close(), Role.BODY);
    out.line(x, rim, x + w, rim, Role.LINE);
    out.outline(
        Pen.at(middle - t, y + 0.07 * h)
            .toX(middle + t)
            .move(middle - t, y + 0.11 * h)
            .toX(middle + t),
        Role.LINE);
  }
}
