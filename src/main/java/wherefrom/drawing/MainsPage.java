package wherefrom.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import wherefrom.engine.Layout;
import wherefrom.engine.MainSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/**
 * The main bearings, each as one column taken apart: block half, upper shell, lower shell, cap. Of
 * a split case: left case, its shell, the other shell, right case. Heights are in units of a column
 * of 638.
 */
public final class MainsPage {
  /** Where the upper shell's name stands. */
  private static final double UPPER_NAME = 276;

  /** From what a name stands below to its middle, in the size of its letters. */
  private static final double UNDER = 0.8;

  /** From a shell's edge to the middle of a mark beside it, in the mark's side. */
  private static final double BESIDE = 0.6;

  private static final double HEADING = 38;
  private static final double HIGH = 638;
  private static final double BLOCK_FOOT = 128;
  private static final double UPPER = 196;
  private static final double LOWER = 342;
  private static final double CAP = 500;
  private static final double CAP_HIGH = 130;
  private static final double WIDE = 0.74;
  private static final double WIDEST = 165;
  private static final double FLANGE = 9;
  private static final double LEAST_HIGH = 380;

  private final Layout layout;
  private final Asked asked;
  private final Glass glass;
  private final Bounds room;
  private final double k;
  private final double top;
  private final double column;
  private final double wide;
  private final double r;
  private final ShapeCollector ground;
  private final ShapeCollector words;
  private final List<PartFigure> parts = new ArrayList<>();
  private final List<Anchor> anchors = new ArrayList<>();
  private final List<Zone> zones = new ArrayList<>();

  private MainsPage(Layout layout, Bounds room, int count, Asked asked, Glass glass) {
    this.layout = layout;
    this.room = room;
    this.asked = asked;
    this.glass = glass;
    double heading = glass.px(HEADING) * glass.factor();
    this.k = (room.height() - heading) / HIGH;
    this.top = room.y() + heading;
    this.column = room.width() / count;
    this.wide = Math.min(WIDE * column, WIDEST * k);
    this.r = BottomEndShapes.BORE * wide;
    this.ground = new ShapeCollector(glass);
    this.words = new ShapeCollector(glass);
  }

  /** How many mains fit a page side by side, each a key; at least one. */
  public static int fitting(double width, Glass glass) {
    return (int) Math.max(1, width / ((glass.finger() + glass.gap()) * glass.factor()));
  }

  /** Whether a room is high enough for names and marks of the size that the person set. */
  public static boolean fits(Bounds room, Glass glass) {
    return room.height() >= glass.px(LEAST_HIGH) * glass.factor();
  }

  /**
   * Draws a page.
   *
   * @param first the first main of the page
   * @param count how many stand on it
   */
  public static Drawing of(
      Layout layout, int first, int count, Bounds room, Asked asked, Glass glass) {
    MainsPage page = new MainsPage(layout, room, count, asked, glass);
    for (int at = 0; at < count; at++) {
      page.column(first + at, room.x() + (at + 0.5) * page.column);
    }
    return new Drawing(
        room,
        glass,
        page.ground.shapes(),
        page.parts,
        page.words.shapes(),
        page.anchors,
        page.zones);
  }

  private double y(double units) {
    return top + units * k;
  }

  private void column(int main, double x) {
    double least = glass.letter() * glass.factor();
    String thrust = "M" + main + " thrust";
    boolean told =
        layout.thrustMain() == main && Letters.width(thrust, least, true) <= 0.96 * column;
    String name = told ? thrust : "M" + main;
    double size = glass.px(40) * glass.factor();
    double fitting = Math.min(size, 0.96 * size * column / Letters.width(name, size, true));
    double y = room.y() + glass.px(HEADING) * glass.factor() / 2;
    words.words(x, y, name, Math.max(least, fitting), Role.NUMBER);
    ground.line(x, y(20), x, y(490), Role.AXIS);
    half(x, y(24), y(BLOCK_FOOT), true);
    shells(main, x);
    if (layout.mainCaps()) {
      cap(main, x);
    } else {
      half(x, y(CAP + CAP_HIGH - 26), y(CAP), false);
    }
    names(x);
    zones(main, x);
  }

  /** Half of block or case; its opening lies at {@code edge}. */
  private void half(double x, double far, double edge, boolean upper) {
    double w = wide / 2;
    double bore = Math.min(r, Math.abs(far - edge) - glass.px(6));
    Pen pen = Pen.at(x - w, edge).toY(far).toX(x + w).toY(edge).toX(x + r);
    ground.outline(pen.arc(r, bore, !upper, x - r, edge).close(), Role.CAST);
  }

  private void shells(int main, double x) {
    for (ShellHalf half : ShellHalf.values()) {
      boolean upper = half == ShellHalf.UPPER;
      double begin = y(upper ? UPPER : LOWER);
      Point mark = new Point(x, shellMark(begin, upper));
      Place place = new Place(PartKind.MAIN_SHELL, new MainSpot(main, half));
      Point tip = new Point(x + r + glass.px(10), begin + (upper ? 0.7 : 0.3) * r);
      part(place, mark, tip, out -> shell(out, main, x, begin, upper));
    }
  }

  /** On the shell; in a narrow column it would cover all of it and lies in its opening. */
  private double shellMark(double begin, boolean upper) {
    double side = ZoomColumn.mark(glass);
    double name = 0.6 * glass.letter() * glass.factor();
    double free = Math.min(y(UPPER_NAME) - name - y(UPPER) - r, y(LOWER) - y(UPPER_NAME) - name);
    if (side > r && free >= 2 * BESIDE * side) {
      return upper ? begin + r + BESIDE * side : begin - BESIDE * side;
    }
    return upper ? y(UPPER + 8) : y(LOWER - 8) + r;
  }

  private void shell(ShapeCollector out, int main, double x, double begin, boolean upper) {
    Bounds box = new Bounds(x - r, begin, 2 * r, r);
    new BottomEndShapes(out).shell(box, upper, glass.px(3));
    if (layout.thrustMain() == main) {
      double high = 34 * k;
      double y = begin + (upper ? r - high : 0);
      for (int side : new int[] {-1, 1}) {
        double edge = x + side * (r + glass.px(FLANGE));
        out.slab(edge - glass.px(5), y, glass.px(10), high, Role.BODY);
      }
    }
  }

  private void cap(int main, double x) {
    Bounds box = new Bounds(x - wide / 2, y(CAP), wide, CAP_HIGH * k);
    Place place = new Place(PartKind.MAIN_CAP, new MainSpot(main, ShellHalf.LOWER));
    Point mark = new Point(x, y(CAP + 94));
    Point tip = new Point(x + wide / 2 + glass.px(10), y(CAP + 50));
    part(place, mark, tip, out -> new BottomEndShapes(out).mainCap(box));
  }

  private void part(Place place, Point mark, Point tip, Consumer<ShapeCollector> draw) {
    ShapeCollector out = new ShapeCollector(glass);
    draw.accept(out);
    double side = ZoomColumn.mark(glass);
    double length = Math.min(glass.px(68), column / 2 - (tip.x() - mark.x()));
    Pointer pointer = Pointer.arrow(mark, glass.px(52), tip, 0, length);
    parts.add(new PartFigure(place, out.shapes(), pointer));
    anchors.add(Anchor.alone(place, mark, side, side, true));
  }

  /** Close below the lower shell and its mark, not beside the cap. */
  private double lowerName() {
    double mark = shellMark(y(LOWER), false) + ZoomColumn.mark(glass) / 2;
    double foot = Math.max(y(LOWER) + r, mark);
    double under = foot + UNDER * glass.letter() * glass.factor();
    return (Math.min(under, (foot + y(CAP)) / 2) - top) / k;
  }

  private void names(double x) {
    boolean caps = layout.mainCaps();
    name(x, UPPER_NAME, caps ? "upper" : "left");
    name(x, lowerName(), caps ? "lower" : "right");
    double cap = Letters.width("cap", glass.letter() * glass.factor(), false);
    boolean fits = cap < 0.42 * wide;
    if (caps && fits && asked.isTracked(PartKind.MAIN_CAP)) {
      name(x, CAP + 22, "cap", false);
    }
  }

  private void name(double x, double units, String name) {
    name(x, units, name, asked.isTracked(PartKind.MAIN_SHELL));
  }

  /** A name, on a patch of ground where the line of the column runs. */
  private void name(double x, double units, String name, boolean onLine) {
    double size = glass.letter() * glass.factor();
    double width = Letters.width(name, size, false);
    if (width > 0.95 * column) {
      return;
    }
    if (onLine) {
      double wide = width + glass.px(12);
      double high = 1.15 * size;
      ground.slab(x - wide / 2, y(units) - high / 2, wide, high, Role.OPENING);
    }
    words.words(x, y(units), name, size, Shape.Side.MIDDLE, Role.NAME);
  }

  private void zones(int main, double x) {
    List<Zone> found = new ArrayList<>();
    for (ShellHalf half : ShellHalf.values()) {
      double middle = y(half == ShellHalf.UPPER ? UPPER + 27 : LOWER + 27);
      found.addAll(zone(new Place(PartKind.MAIN_SHELL, new MainSpot(main, half)), x, middle));
    }
    if (layout.mainCaps()) {
      Place cap = new Place(PartKind.MAIN_CAP, new MainSpot(main, ShellHalf.LOWER));
      found.addAll(zone(cap, x, y(CAP + CAP_HIGH / 2)));
    }
    double least = (LOWER - UPPER) * k;
    if (found.size() < 2 || least >= glass.finger() + glass.gap()) {
      zones.addAll(found);
      return;
    }
    List<Place> all =
        found.stream()
            .map(zone -> (Target.Parts) zone.target())
            .flatMap(parts -> parts.places().stream())
            .toList();
    Bounds box = box(x, room.middleY(), room.height());
    zones.add(new Zone(new Target.Parts(all), box, "main " + main));
  }

  private List<Zone> zone(Place place, double x, double middle) {
    if (!asked.isTracked(place.kind())) {
      return List.of();
    }
    String name = PlaceWords.of(layout, place);
    Bounds box = box(x, middle, glass.finger());
    return List.of(new Zone(new Target.Parts(List.of(place)), box, name));
  }

  private Bounds box(double x, double middle, double high) {
    double w = column - glass.gap();
    return new Bounds(x - w / 2, middle - high / 2, w, high);
  }
}
