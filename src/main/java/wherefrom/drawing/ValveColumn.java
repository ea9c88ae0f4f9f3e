package wherefrom.drawing;

import java.util.List;
import java.util.Optional;
import wherefrom.engine.Layout;
import wherefrom.engine.LifterType;
import wherefrom.engine.RockerMount;
import wherefrom.engine.ValveSpot;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/** One valve drawn large, from lifter to valve. */
final class ValveColumn {
  private static final double PUSHROD = 0.16;
  private static final double STEM = 0.82;
  private static final double LIFTER_TOP = 0.79;
  private static final double ASIDE = 0.19;

  /** Below the rocker's stand. */
  private static final double KEEPERS_MARK = 0.315;

  private static final int COILS = 5;

  /** Marks beside the spring are so far apart, in their side. */
  private static final double APART = 1.05;

  private final ZoomColumn at;
  private final ValveSpot valve;
  private final boolean shaft;
  private final boolean roller;
  private final double c;
  private final double h;
  private final double high;
  private final double rk;
  private final double px;
  private final double vx;
  private final double unit;

  private ValveColumn(ZoomColumn at, Layout layout, ValveSpot valve) {
    this.at = at;
    this.valve = valve;
    this.shaft = layout.rockers() == RockerMount.SHAFT;
    this.roller = layout.lifters() == LifterType.ROLLER;
    this.c = at.width();
    this.h = at.height();
    this.high = at.topHeight();
    this.rk = at.rockerHeight();
    this.px = at.x(PUSHROD);
    this.vx = at.x(STEM);
    this.unit = at.glass().unit();
  }

  static void draw(ZoomColumn at, Layout layout, ValveSpot valve) {
    ValveColumn column = new ValveColumn(at, layout, valve);
    column.castings();
    column.pushrodAndLifter();
    column.valveAndSpring();
    column.rocker();
    column.names();
  }

  private Place place(PartKind kind) {
    return new Place(kind, valve);
  }

  private void part(PartKind kind, Point spot, java.util.function.Consumer<ShapeCollector> draw) {
    at.part(place(kind), spot, ASIDE * c, draw);
  }

  /** The lifter's bore, and the head with guide, port and seat. */
  private void castings() {
    bore();
    int before = at.ground().count();
    at.ground().outline(head(), Role.BACK);
    ShapeCollector contour = new ShapeCollector(at.glass());
    contour.outline(head(), Role.BODY);
    boolean marked = at.asked().isMeant(PartKind.VALVE);
    Optional<Point> mark = Optional.of(new Point(vx, at.y(0.72))).filter(spot -> !marked);
    carrier(BigPartKind.HEAD, before, contour.shapes(), mark);
  }

  /** What came onto the ground since is of a head or shaft. */
  private void carrier(BigPartKind kind, int before, List<Shape> contour, Optional<Point> mark) {
    double side = ZoomColumn.mark(at.glass());
    List<Shape> solid = at.ground().since(before);
    at.carriers().add(new CarrierFigure(kind, valve.cylinder(), solid, contour, mark, side));
  }

  private void bore() {
    double half = 0.125 * c;
    double top = at.y(LIFTER_TOP + 0.03);
    for (double x : new double[] {px - half - 0.045 * c, px + half + 0.005 * c}) {
      at.ground().slab(x, top, 0.04 * c, 0.16 * h, Role.BACK);
    }
  }

  private Pen head() {
    double foot = at.y(0.95);
    double high = h;
    Pen pen = Pen.at(vx - 0.15 * c, at.y(0.50)).toX(vx + 0.15 * c).toY(foot).toX(vx + 0.135 * c);
    pen.cubic(
        vx + 0.10 * c,
        foot - high * 0.10,
        vx + 0.06 * c,
        foot - high * 0.12,
        vx + 0.05 * c,
        foot - high * 0.22);
    pen.toX(vx - 0.05 * c);
    pen.cubic(
        vx - 0.06 * c, foot - high * 0.12, vx - 0.10 * c, foot - high * 0.10, vx - 0.135 * c, foot);
    return pen.toX(vx - 0.15 * c).close();
  }

  private void pushrodAndLifter() {
    double top = at.y(0) + rk * 0.70;
    double lifter = at.y(LIFTER_TOP);
    double wide = 0.10 * c;
    Bounds tube = Bounds.between(px - wide / 2, top, px + wide / 2, lifter + h * 0.02);
    part(
        PartKind.PUSHROD,
        new Point(px, at.y(0.55)),
        out -> new TopEndShapes(out, unit).pushrod(tube));
    Bounds cup = new Bounds(px - 0.125 * c, lifter, 0.25 * c, h * 0.20);
    double down = lifter + h * (roller ? 0.055 : 0.12);
    part(
        PartKind.LIFTER,
        new Point(px, down),
        out -> new TopEndShapes(out, unit).lifter(cup, roller));
  }

  private void valveAndSpring() {
    double top = at.y(0);
    double head = at.y(0.95);
    Bounds stem = Bounds.between(vx - 0.14 * c, top + rk * 0.88, vx + 0.14 * c, head);
    part(PartKind.VALVE, new Point(vx, at.y(0.72)), out -> new ValveShapes(out, unit).valve(stem));
    Bounds coils = Bounds.between(vx - 0.125 * c, top + rk * 1.18, vx + 0.125 * c, at.y(0.50));
    part(
        PartKind.SPRING,
        new Point(vx, at.y(0.385)),
        out -> new ValveShapes(out, unit).spring(coils, COILS));
    Bounds plate = new Bounds(vx - 0.135 * c, top + rk * 0.97, 0.27 * c, rk * 0.28);
    part(
        PartKind.RETAINER,
        beside(retainerMark(), PartKind.RETAINER, "retainer", 0.065, 0.28),
        out -> new ValveShapes(out, unit).retainer(plate));
    if (hasKeepers()) {
      Bounds wedges = new Bounds(vx - 0.045 * c, top + rk * 0.93, 0.09 * c, rk * 0.24);
      Point above = beside(KEEPERS_MARK * high, PartKind.KEEPERS, "keepers", 0.035, 0.225);
      part(PartKind.KEEPERS, above, out -> new ValveShapes(out, unit).keepers(wedges));
    }
  }

  private boolean hasKeepers() {
    return at.asked().isTracked(PartKind.KEEPERS);
  }

  /** How far down the retainer's mark is: below that of the keepers. */
  private double retainerMark() {
    double step = Math.max(0.09 * high, APART * ZoomColumn.mark(at.glass()));
    return hasKeepers() ? KEEPERS_MARK * high + step : 0.335 * high;
  }

  /**
   * A spot for a mark on the left of the spring, with a line to a part that is too small for it,
   * and its name where the column is wide enough.
   *
   * @param down from below the heading
   * @param edge of the part, in the height that the top follows
   */
  private Point beside(double down, PartKind kind, String name, double aside, double edge) {
    Point spot = new Point(vx - 0.24 * c, at.y(0) + down);
    if (at.asked().isMeant(kind)) {
      at.words().line(spot.x(), spot.y(), vx - aside * c, at.y(0) + edge * high, Role.RULE);
      double left = spot.x() - ZoomColumn.mark(at.glass()) / 2;
      at.name(kind, name, left, left - at.glass().px(12), px + 0.07 * c, spot.y());
    }
    return spot;
  }

  private void rocker() {
    double wide = (vx - px) / (RockerShapes.TIP - RockerShapes.CUP);
    double top = at.y(0) + 4 * unit;
    Bounds box = new Bounds(px - RockerShapes.CUP * wide, top, wide, rk);
    int before = at.ground().count();
    new RockerShapes(at.ground(), box).stand(shaft, high * 0.05);
    BigPartKind under = shaft ? BigPartKind.ROCKER_SHAFT : BigPartKind.HEAD;
    carrier(under, before, List.of(), Optional.empty());
    part(
        PartKind.ROCKER,
        new Point(box.x() + 0.63 * wide, top + rk * 0.50),
        out -> new RockerShapes(out, box).draw(shaft));
    if (at.asked().isTracked(PartKind.PIVOT)) {
      double half = 0.55 * ZoomColumn.mark(at.glass());
      part(
          PartKind.PIVOT,
          new Point(box.x() + RockerShapes.PIVOT * wide - 2.2 * half, top + half),
          out -> new RockerShapes(out, box).pivot(shaft));
    }
  }

  /** Below the retainer's mark, where that has one. */
  private double springName() {
    boolean marked = at.asked().isMeant(PartKind.RETAINER);
    double under = (retainerMark() + 0.07 * high) / h;
    return marked ? Math.min(0.48, Math.max(0.43, under)) : 0.43;
  }

  private void names() {
    double lifter = at.y(LIFTER_TOP) + h * 0.165;
    double head = vx - 0.16 * c;
    at.name(PartKind.PUSHROD, "pushrod", px + 0.06 * c, px + 0.095 * c, head, at.y(0.66));
    at.name(
        PartKind.SPRING, "spring", vx - 0.13 * c, vx - 0.20 * c, px + 0.07 * c, at.y(springName()));
    at.name(PartKind.LIFTER, "lifter", px + 0.13 * c, px + 0.21 * c, head, lifter);
  }
}
