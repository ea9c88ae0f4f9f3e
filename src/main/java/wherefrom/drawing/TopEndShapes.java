package wherefrom.drawing;

/** Pushrods, lifters and pivots seen from the side, each in a box. */
final class TopEndShapes {
  private final ShapeCollector out;
  private final double unit;

  TopEndShapes(ShapeCollector out, double unit) {
    this.out = out;
    this.unit = unit;
  }

  /** Upright; the tube as wide as the box, the band below the top ball. */
  void pushrod(Bounds box) {
    double x = box.middleX();
    double t = box.width() / 2;
    double r = t * 1.12;
    for (double ball : new double[] {box.y() + r, box.bottom() - r}) {
      out.disc(x, ball, r, Role.BODY);
    }
    double top = box.y() + r * 1.6;
    double foot = box.bottom() - r * 1.6;
    out.outline(Pen.at(x - t, top).toY(foot).toX(x + t).toY(top).close(), Role.BODY);
    if (box.width() > 14 * unit) {
      for (double hole : new double[] {box.y() + r * 0.45, box.bottom() - r * 0.45}) {
        out.disc(x, hole, r * 0.20, Role.HOLLOW);
      }
    }
    double high = Math.max(5 * unit, box.width() * 0.55);
    out.slab(x - t, box.y() + r * 2.6, box.width(), high, Role.BAND);
  }

  /** Flat with a crowned foot, or with a wheel between two cheeks. */
  void lifter(Bounds box, boolean roller) {
    double x = box.x();
    double y = box.y();
    double w = box.width();
    double h = box.height();
    if (roller) {
      wheel(box);
    } else {
      out.outline(
          shoulders(box, 0.93).quad(x + w / 2, y + 1.03 * h, x, y + 0.93 * h).close(), Role.BODY);
      out.line(x, y + 0.80 * h, x + w, y + 0.80 * h, Role.LINE);
    }
    Pen cup = Pen.at(x + 0.22 * w, y).quad(x + 0.25 * w, y + 0.16 * h, x + 0.5 * w, y + 0.16 * h);
    out.outline(cup.quad(x + 0.75 * w, y + 0.16 * h, x + 0.78 * w, y).close(), Role.HOLLOW);
    out.slab(x, y + 0.30 * h, w, 0.13 * h, Role.HOLLOW);
    out.disc(x + w / 2, y + 0.365 * h, 0.045 * w, Role.FASTENER);
  }

  private static Pen shoulders(Bounds box, double down) {
    double w = box.width();
    double h = box.height();
    return Pen.at(box.x(), box.y() + 0.06 * h)
        .quad(box.x(), box.y(), box.x() + 0.06 * w, box.y())
        .toX(box.x() + 0.94 * w)
        .quad(box.right(), box.y(), box.right(), box.y() + 0.06 * h)
        .toY(box.y() + down * h);
  }

  private void wheel(Bounds box) {
    double x = box.x();
    double y = box.y();
    double w = box.width();
    double h = box.height();
    double radius = 0.34 * w;
    out.disc(x + w / 2, box.bottom() - radius, radius, Role.BODY);
    out.outline(
        shoulders(box, 0.62)
            .to(x + 0.88 * w, y + 0.70 * h)
            .toY(y + 0.84 * h)
            .quad(x + 0.5 * w, y + 0.62 * h, x + 0.12 * w, y + 0.84 * h)
            .toY(y + 0.70 * h)
            .to(x, y + 0.62 * h)
            .close(),
        Role.BODY);
    out.disc(x + w / 2, box.bottom() - radius, 0.09 * w, Role.FASTENER);
  }

  /** The half ball that a stud rocker turns on, with its nut. */
  void pivot(Bounds box) {
    double x = box.x();
    double y = box.y();
    double w = box.width();
    double h = box.height();
    out.outline(
        Pen.at(x, y + 0.42 * h).arc(w / 2, 0.56 * h, false, x + w, y + 0.42 * h).close(),
        Role.BODY);
    out.slab(x + 0.22 * w, y + 0.10 * h, 0.56 * w, 0.32 * h, 0.03 * w, Role.FASTENER);
    out.slab(x + 0.42 * w, y - 0.06 * h, 0.16 * w, 0.16 * h, Role.BODY);
  }

  /** The bushing that a rocker turns with on its shaft. */
  void bushing(Bounds box) {
    double r = Math.min(box.width(), box.height()) / 2;
    out.disc(box.middleX(), box.middleY(), r, Role.BODY);
    out.disc(box.middleX(), box.middleY(), 0.68 * r, Role.HOLLOW);
  }
}
