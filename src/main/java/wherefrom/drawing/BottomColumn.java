package wherefrom.drawing;

import java.util.List;
import wherefrom.engine.BoreSpot;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/** The bottom end of one cylinder drawn large, taken apart along one line. */
final class BottomColumn {
  private static final double ASIDE = 0.22;
  private static final double WIDE = 0.60;

  /** Wider, in the column's height, and the cap would reach out of it. */
  private static final double WIDEST = 0.34;

  /** Where the cap ends, and its height, in the column's height. */
  private static final double FOOT = 0.99;

  private static final double CAP = 0.17;

  /** The most of a cap's height in its width. */
  private static final double CAP_TO_WIDE = 0.6;

  private final ZoomColumn at;
  private final int cylinder;
  private final double x;
  private final double wide;
  private final double r;

  private BottomColumn(ZoomColumn at, int cylinder) {
    this.at = at;
    this.cylinder = cylinder;
    this.x = at.x(0.33);
    this.wide = Math.min(WIDE * at.width(), WIDEST * at.height());
    this.r = BottomEndShapes.BORE * wide;
  }

  static void draw(ZoomColumn at, int cylinder) {
    BottomColumn column = new BottomColumn(at, cylinder);
    at.ground().line(column.x, at.y(0.10), column.x, at.y(0.99), Role.AXIS);
    column.pistonAndRod();
    column.shells();
    column.cap();
    column.names();
  }

  private void pistonAndRod() {
    double h = at.height();
    Bounds crown = new Bounds(x - 0.40 * wide, at.y(0), 0.80 * wide, h * 0.125);
    part(
        new Place(PartKind.PISTON, new BoreSpot(cylinder)),
        0.0625,
        out -> new BottomEndShapes(out).piston(crown));
    Bounds beam = new Bounds(x - wide / 2, at.y(0.14), wide, h * 0.22);
    part(
        new Place(PartKind.ROD, new RodSpot(cylinder, ShellHalf.UPPER)),
        0.235,
        out -> new BottomEndShapes(out).rod(beam));
  }

  private void part(Place place, double down, java.util.function.Consumer<ShapeCollector> draw) {
    at.part(place, new Point(x, at.y(down)), ASIDE * at.width(), draw);
  }

  private void shells() {
    double least = at.glass().px(3);
    for (ShellHalf half : List.of(ShellHalf.UPPER, ShellHalf.LOWER)) {
      boolean upper = half == ShellHalf.UPPER;
      double middle = upper ? 0.47 : 0.68;
      Bounds box = new Bounds(x - r, at.y(middle) - r / 2, 2 * r, r);
      double crest = middle + (upper ? -0.42 : 0.42) * r / at.height();
      part(
          new Place(PartKind.ROD_SHELL, new RodSpot(cylinder, half)),
          crest,
          out -> new BottomEndShapes(out).shell(box, upper, least));
    }
  }

  /** Of a slim column no more than suits its width. */
  private double capHigh() {
    return Math.max(Math.min(CAP * at.height(), CAP_TO_WIDE * wide), r * 1.32);
  }

  private void cap() {
    double high = capHigh();
    Bounds box = new Bounds(x - wide / 2, at.y(FOOT) - high, wide, high);
    part(
        new Place(PartKind.ROD_CAP, new RodSpot(cylinder, ShellHalf.LOWER)),
        FOOT - 0.06 / CAP * capHigh() / at.height(),
        out -> new BottomEndShapes(out).rodCap(box));
  }

  private void names() {
    double begin = at.x(0.715);
    double end = at.right() + at.glass().px(8);
    double bolts = x + wide / 2 + at.glass().px(4);
    double bore = x + r + at.glass().px(6);
    at.name(PartKind.PISTON, "piston", x + 0.40 * wide, begin, end, at.y(0.06));
    at.name(PartKind.ROD, "rod", x + 0.12 * wide, begin, end, at.y(0.22));
    at.name(PartKind.ROD_SHELL, "upper", bore, begin, end, at.y(0.47));
    at.name(PartKind.ROD_SHELL, "lower", bore, begin, end, at.y(0.68));
    at.name(PartKind.ROD_CAP, "cap", bolts, begin, end, at.y(FOOT) - 0.09 / CAP * capHigh());
  }
}
