package wherefrom.drawing;

import java.util.ArrayList;
import java.util.List;

/** The crank seen from below: journals, webs and pins, turned so that cylinder 1 fires. */
final class Crank {
  /** Pins nearer than this, in pitches, are one pin. */
  private static final double SAME = 0.008;

  private final ShapeCollector out;
  private final EngineGeometry at;
  private final double pitch;

  private Crank(ShapeCollector out, EngineGeometry at) {
    this.out = out;
    this.at = at;
    this.pitch = at.pitch();
  }

  static void draw(ShapeCollector out, EngineGeometry at) {
    Crank crank = new Crank(out, at);
    double length = at.rear() - at.front() + 0.04 * at.pitch();
    out.slab(
        at.front() - 0.02 * at.pitch(),
        at.axis() - 0.085 * at.pitch(),
        length,
        0.17 * at.pitch(),
        Role.METAL);
    List<Point> drawn = new ArrayList<>();
    for (int cylinder : at.cylinders()) {
      Point pin = at.pin(cylinder);
      if (drawn.stream().noneMatch(other -> crank.isSame(other, pin))) {
        drawn.add(pin);
        crank.pin(pin);
      }
    }
  }

  private boolean isSame(Point one, Point two) {
    return Math.abs(one.x() - two.x()) < SAME * pitch && Math.abs(one.y() - two.y()) < SAME * pitch;
  }

  private void pin(Point pin) {
    double away = pin.y() - at.axis();
    double counter = at.axis() - away * 1.2;
    boolean below = away > 0;
    double top = below ? counter - 0.20 * pitch : pin.y() - 0.13 * pitch;
    double bottom = below ? pin.y() + 0.13 * pitch : counter + 0.20 * pitch;
    double web = at.isTwo() ? 0.255 : 0.19;
    for (int side : new int[] {-1, 1}) {
      double x = pin.x() + side * web * pitch - 0.045 * pitch;
      out.slab(x, top, 0.09 * pitch, bottom - top, Role.METAL);
    }
    double half = (at.isTwo() ? 0.24 : 0.15) * pitch;
    out.slab(pin.x() - half, pin.y() - 0.09 * pitch, 2 * half, 0.18 * pitch, Role.METAL);
  }
}
