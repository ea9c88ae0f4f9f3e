package wherefrom.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.engine.Bank;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;
import wherefrom.parts.BigPartKind;

/** The engine without its parts, seen from above: block, barrels, heads and their bolts. */
final class AboveCastings {
  /** From the middle of the first and last bore to the ends of their bank, in bore pitches. */
  static final double BANK_END = 0.54;

  private static final int FINS = 6;

  private final ShapeCollector out;
  private final EngineGeometry at;
  private final double pitch;
  private final Outward places;

  private final List<CarrierFigure> carriers = new ArrayList<>();

  private AboveCastings(ShapeCollector out, EngineGeometry at) {
    this.out = out;
    this.at = at;
    this.pitch = at.pitch();
    this.places = at.outward();
  }

  /**
   * Draws them.
   *
   * @return the heads and rocker shafts among them
   */
  static List<CarrierFigure> draw(ShapeCollector out, EngineGeometry at) {
    AboveCastings castings = new AboveCastings(out, at);
    double half = at.isOpposed() ? 0.56 : 0.66;
    FrontAndRear.draw(out, at, at.isTwo() ? half : 0.46);
    castings.block();
    at.layout().banks().forEach(castings::head);
    return castings.carriers;
  }

  private void block() {
    double wide = at.rear() - at.front();
    if (!at.isTwo()) {
      double top = at.axis() - 0.42 * pitch;
      out.slab(at.front(), top, wide, 1.02 * pitch, 0.03 * pitch, Role.DEEP);
      return;
    }
    if (at.isOpposed()) {
      at.cylinders().forEach(this::barrel);
    }
    double half = (at.isOpposed() ? 0.44 : 0.60) * pitch;
    out.slab(at.front(), at.axis() - half, wide, 2 * half, 0.03 * pitch, Role.DEEP);
  }

  /** A barrel with its fins, between the case and the head. */
  private void barrel(int cylinder) {
    ValveRow row = at.row(cylinder);
    double from = Math.min(row.y(0.40), row.y(places.inner() + 0.02));
    double to = Math.max(row.y(0.40), row.y(places.inner() + 0.02));
    out.slab(row.x() - 0.42 * pitch, from, 0.84 * pitch, to - from, Role.CAST);
    for (int fin = 1; fin <= FINS; fin++) {
      double y = from + fin * (to - from) / (FINS + 1);
      out.line(row.x() - 0.45 * pitch, y, row.x() + 0.45 * pitch, y, Role.RULE);
    }
  }

  private void head(Bank bank) {
    List<Integer> cylinders = bank.cylinders();
    ValveRow first = at.row(cylinders.get(0));
    double x1 = first.x() - BANK_END * pitch;
    double x2 = at.boreX(cylinders.get(cylinders.size() - 1)) + BANK_END * pitch;
    double lifters = Math.min(first.y(places.lifter() - 0.14), first.y(places.lifter() + 0.14));
    double tray = x2 - x1 - 0.20 * pitch;
    int before = out.count();
    cylinders.forEach(this::stub);
    List<Shape> solid = new ArrayList<>(out.since(before));
    out.slab(x1 + 0.10 * pitch, lifters, tray, 0.28 * pitch, 0.14 * pitch, Role.CAST);
    before = out.count();
    plate(x1, x2, first);
    if (at.isTwo() && !at.isOpposed()) {
      cylinders.forEach(this::intake);
    }
    solid.addAll(out.since(before));
    List<Shape> shaft = new ArrayList<>();
    if (at.isShaft()) {
      before = out.count();
      bar(out, x1, x2, first, Role.METAL);
      shaft.addAll(out.since(before));
    }
    for (int gap = 0; gap <= cylinders.size(); gap++) {
      double x = first.x() + (gap - 0.5) * pitch;
      before = out.count();
      if (at.isShaft()) {
        stand(first, x);
        shaft.addAll(out.since(before));
      }
      before = out.count();
      bolts(first, x);
      solid.addAll(out.since(before));
    }
    carriers(bank, solid, shaft);
  }

  private void bar(ShapeCollector to, double x1, double x2, ValveRow first, Role role) {
    double y = first.y(places.stud()) - 0.045 * pitch;
    double wide = x2 - x1 - 0.16 * pitch;
    to.slab(x1 + 0.08 * pitch, y, wide, 0.09 * pitch, 0.02 * pitch, role);
  }

  /** The mark of a head stands between its bores, that of a shaft at its front end. */
  private void carriers(Bank bank, List<Shape> solid, List<Shape> shaft) {
    List<Integer> cylinders = bank.cylinders();
    ValveRow first = at.row(cylinders.get(0));
    double x1 = first.x() - BANK_END * pitch;
    double x2 = at.boreX(cylinders.get(cylinders.size() - 1)) + BANK_END * pitch;
    ShapeCollector head = new ShapeCollector(at.glass());
    double top = Math.min(first.y(places.inner()), first.y(places.outer()));
    double high = (places.outer() - places.inner()) * pitch;
    head.slab(x1, top, x2 - x1, high, 0.07 * pitch, Role.BODY);
    int half = cylinders.size() / 2;
    double middle = first.x() + (half - 0.5) * pitch;
    double across = first.y((places.inner() + places.outer()) / 2);
    carriers.add(figure(BigPartKind.HEAD, bank, solid, head, new Point(middle, across)));
    if (!shaft.isEmpty()) {
      ShapeCollector contour = new ShapeCollector(at.glass());
      bar(contour, x1, x2, first, Role.BODY);
      Point front = new Point(x1 + 0.04 * pitch, first.y(places.stud()));
      carriers.add(figure(BigPartKind.ROCKER_SHAFT, bank, shaft, contour, front));
    }
  }

  private CarrierFigure figure(
      BigPartKind kind, Bank bank, List<Shape> solid, ShapeCollector contour, Point mark) {
    double side = MarkShapes.side(at);
    return new CarrierFigure(
        kind, bank.cylinders().get(0), solid, contour.shapes(), Optional.of(mark), side);
  }

  private void plate(double x1, double x2, ValveRow row) {
    double top = Math.min(row.y(places.inner()), row.y(places.outer()));
    double high = (places.outer() - places.inner()) * pitch;
    double edge = 0.05 * pitch;
    out.slab(x1, top, x2 - x1, high, 0.07 * pitch, Role.CAST);
    out.slab(x1 + edge, top + edge, x2 - x1 - 2 * edge, high - 2 * edge, 0.05 * pitch, Role.EDGE);
  }

  /** The exhaust port's stub, outward. */
  private void stub(int cylinder) {
    ValveRow row = at.row(new ValveSpot(cylinder, ValveSide.EXHAUST));
    double top = Math.min(row.y(places.outer()), row.y(places.stub()));
    double high = (places.stub() - places.outer()) * pitch;
    out.slab(row.x() - 0.13 * pitch, top, 0.26 * pitch, high, Role.CAST);
  }

  /** The intake port on the inner edge of a V's head. */
  private void intake(int cylinder) {
    ValveRow row = at.row(new ValveSpot(cylinder, ValveSide.INTAKE));
    double x = row.x();
    out.outline(
        Pen.at(x - 0.12 * pitch, row.y(places.inner()))
            .toY(row.y(places.inner() + 0.06))
            .toX(x + 0.12 * pitch)
            .toY(row.y(places.inner())),
        Role.EDGE);
  }

  /** The stand of a rocker shaft. */
  private void stand(ValveRow row, double x) {
    double y = row.y(places.stud()) - 0.10 * pitch;
    out.slab(x - 0.07 * pitch, y, 0.14 * pitch, 0.20 * pitch, 0.02 * pitch, Role.CAST);
  }

  /** Two head bolts between the bores. */
  private void bolts(ValveRow row, double x) {
    double inner = places.inner() + (at.isShaft() ? 0.09 : 0.12);
    for (double bolt : new double[] {inner, places.outer() - 0.09}) {
      out.disc(x, row.y(bolt), 0.052 * pitch, Role.METAL);
      out.hexagon(x, row.y(bolt), 0.034 * pitch, Role.NUT, 0.3);
    }
  }
}
