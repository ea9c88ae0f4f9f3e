package wherefrom.drawing;

/** The engine without its parts, seen from below: pan rail and webs, or the open split case. */
final class BelowCastings {
  private static final double EDGE = EngineGeometry.RAIL_EDGE;
  private static final double RAIL = 0.06;

  private final ShapeCollector out;
  private final EngineGeometry at;
  private final double pitch;

  private BelowCastings(ShapeCollector out, EngineGeometry at) {
    this.out = out;
    this.at = at;
    this.pitch = at.pitch();
  }

  static void draw(ShapeCollector out, EngineGeometry at) {
    BelowCastings castings = new BelowCastings(out, at);
    FrontAndRear.draw(out, at, 0.74);
    if (at.layout().mainCaps()) {
      castings.rail();
      castings.webs();
    } else {
      castings.half(-1);
      castings.half(1);
    }
  }

  private void rail() {
    double wide = at.rear() - at.front();
    double top = at.axis() - EDGE * pitch;
    out.slab(at.front(), top, wide, 2 * EDGE * pitch, 0.05 * pitch, Role.CAST);
    double rail = RAIL * pitch;
    double high = 2 * (EDGE - RAIL) * pitch;
    out.slab(at.front() + rail, top + rail, wide - 2 * rail, high, 0.04 * pitch, Role.DEEP);
    int bolts = 2 * at.bores() + 1;
    for (int bolt = 0; bolt < bolts; bolt++) {
      double x = at.front() + rail / 2 + bolt * (wide - rail) / (bolts - 1);
      for (int side : new int[] {-1, 1}) {
        out.disc(x, at.axis() + side * (EDGE - RAIL / 2) * pitch, 0.017 * pitch, Role.METAL);
      }
    }
  }

  private void webs() {
    double high = (EDGE - RAIL) * pitch;
    double half = 0.09 * at.mains().drawnPitch();
    for (int main = 1; main <= at.mains().count(); main++) {
      double x = at.mains().x(main);
      out.slab(x - half, at.axis() - high, 2 * half, 2 * high, Role.CAST);
    }
  }

  /** One half of a split case, laid open: the left one above. */
  private void half(int side) {
    double wide = at.rear() - at.front();
    band(side, 0.30, EDGE, at.front(), wide, 0.05, Role.CAST);
    double in = 0.09 * pitch;
    band(side, 0.42, EDGE - 0.09, at.front() + in, wide - 2 * in, 0.04, Role.DEEP);
    double saddle = 0.20 * at.mains().drawnPitch();
    for (int main = 1; main <= at.mains().count(); main++) {
      band(side, 0.30, 0.60, at.mains().x(main) - saddle, 2 * saddle, 0, Role.CAST);
    }
  }

  private void band(
      int side, double from, double to, double x, double wide, double round, Role role) {
    double y = at.axis() + Math.min(side * from, side * to) * pitch;
    out.slab(x, y, wide, (to - from) * pitch, round * pitch, role);
  }
}
