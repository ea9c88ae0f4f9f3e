package wherefrom.drawing;

import java.util.List;

/** The marks of states as shapes. Outlines differ by themselves; a letter only names them. */
public final class MarkShapes {
  /** A mark on a drawing, in units of {@link Glass}: its letter is then a least one. */
  private static final double SIDE = 46;

  private static final double SMALL_SIDE = 0.34;
  private static final double SMALL_PITCH = 100;
  private static final double LINE = 0.06;

  /** The letter in the side of a mark; at 46 it is a least letter. */
  private static final double LETTER = 0.783;

  private final double x;
  private final double y;
  private final double side;
  private final double r;
  private final Glass glass;
  private final ShapeCollector out;
  private final double line;

  private MarkShapes(Point at, double side, Glass glass) {
    this.x = at.x();
    this.y = at.y();
    this.side = side;
    this.r = side / 2;
    this.glass = glass;
    this.out = new ShapeCollector(glass);
    this.line = Math.max(1.6 * glass.unit(), LINE * side);
  }

  /** The side of a mark on the drawing of an engine. */
  static double side(EngineGeometry at) {
    double unit = at.glass().unit();
    if (at.pitch() <= SMALL_PITCH * unit) {
      return SMALL_SIDE * at.pitch();
    }
    double grown = SIDE * unit * at.glass().factor();
    return Math.max(SIDE * unit, Math.min(grown, SMALL_SIDE * at.pitch()));
  }

  /**
   * A mark.
   *
   * @param at its middle
   * @param side of the box that it takes; below 46 units of the glass it bears no letter
   */
  public static PlacedMark of(Sign sign, Point at, double side, Glass glass) {
    MarkShapes mark = new MarkShapes(at, side, glass);
    mark.draw(sign);
    return new PlacedMark(sign, at, side, mark.out.shapes());
  }

  /** The small tag that hangs where a part is out; it bears no letter. */
  public static PlacedMark tag(Point at, double height, Glass glass) {
    MarkShapes mark = new MarkShapes(at, height, glass);
    double width = height * 1.5;
    double cut = height * 0.3;
    double left = at.x() - width / 2;
    mark.tag(
        left, at.x() + width / 2, height / 2, cut, Math.max(1.4 * glass.unit(), 0.13 * height));
    mark.out.disc(left + cut, at.y(), 0.12 * height, Role.ON_PAPER);
    return new PlacedMark(Sign.OUT, at, width, mark.out.shapes());
  }

  private void draw(Sign sign) {
    switch (sign) {
      case IN -> square(Role.INK);
      case OUT -> tag(x - r * 1.06, x + r * 1.06, r * 0.9, r * 0.5, line);
      case WASHING -> basket();
      case AT_SHOP -> house();
      case MISSING -> square(Role.DASHED_PLATE);
      case FITTED -> tick();
      case OTHER -> octagon();
      case AGAINST -> warning();
      case SUSPECT -> doubt();
      case FAILED -> cross();
      case OPEN -> open();
      case WAITING -> out.add(new Shape.Disc(x, y, r, Role.PLATE, line));
      case EMPTY -> tray();
      case NEW -> wideTag();
    }
    letter(sign);
  }

  /** As wide as its word. */
  private void wideTag() {
    double word = Letters.width(Sign.NEW.letter(), LETTER * side, true) / 2;
    tag(x - word - 0.75 * r, x + word + 0.4 * r, r * 0.9, r * 0.5, line, Role.PLATE);
  }

  private void letter(Sign sign) {
    double size = LETTER * side;
    if (sign.letter().isEmpty() || size < 0.99 * Math.min(glass.letter(), 36 * glass.unit())) {
      return;
    }
    double down =
        switch (sign) {
          case WASHING -> 0.14 * r;
          case AT_SHOP -> 0.28 * r;
          default -> 0;
        };
    Role role =
        switch (sign) {
          case IN -> Role.LETTER_ON_INK;
          case OUT -> Role.LETTER_ON_PAPER;
          default -> Role.LETTER;
        };
    out.words(x, y + down, sign.letter(), size, role);
  }

  private void tag(double left, double right, double half, double cut, double width) {
    tag(left, right, half, cut, width, Role.PAPER);
  }

  private void tag(double left, double right, double half, double cut, double width, Role role) {
    out.outline(
        Pen.at(left + cut, y - half)
            .toX(right)
            .toY(y + half)
            .toX(left + cut)
            .to(left, y + half - cut)
            .toY(y - half + cut)
            .close(),
        role,
        width);
  }

  private void square(Role role) {
    double half = 0.9 * r;
    out.outline(
        Pen.at(x - half, y - half).toX(x + half).toY(y + half).toX(x - half).close(), role, line);
  }

  /** A basket with its handle. */
  private void basket() {
    double rim = y - 0.62 * r;
    double foot = y + 0.95 * r;
    Pen pen = Pen.at(x - r, rim).toX(x + r).to(x + 0.72 * r, foot).toX(x - 0.72 * r).close();
    pen.move(x - 0.7 * r, rim).arc(0.7 * r, 0.5 * r, true, x + 0.7 * r, rim);
    out.outline(pen, Role.PLATE, line);
  }

  private void house() {
    double eaves = y - 0.34 * r;
    double foot = y + 0.98 * r;
    Pen pen = Pen.at(x, y - 1.14 * r).to(x + 1.12 * r, eaves).toX(x + 0.92 * r).toY(foot);
    out.outline(pen.toX(x - 0.92 * r).toY(eaves).toX(x - 1.12 * r).close(), Role.PLATE, line);
  }

  private void tick() {
    out.add(new Shape.Disc(x, y, r, Role.FIT, line));
    out.outline(
        Pen.at(x - 0.45 * r, y + 0.02 * r)
            .to(x - 0.1 * r, y + 0.38 * r)
            .to(x + 0.5 * r, y - 0.36 * r),
        Role.TICK,
        0.2 * r);
  }

  private void octagon() {
    List<Point> corners = ShapeCollector.corners(8, x, y, 1.04 * r, Math.PI / 8);
    out.outline(Pen.round(corners), Role.STOP, line);
    out.slab(x - 0.55 * r, y - 0.14 * r, 1.1 * r, 0.28 * r, Role.WHITE);
  }

  /** A triangle that stands on its side, with a bar and a dot. */
  private void warning() {
    out.outline(
        Pen.at(x, y - 1.05 * r).to(x + 1.1 * r, y + 0.9 * r).toX(x - 1.1 * r).close(),
        Role.PLATE,
        line);
    bar(y - 0.42 * r, y + 0.30 * r);
    out.disc(x, y + 0.60 * r, 0.15 * r, Role.INK);
  }

  /** A triangle that stands on its point: it may fall either way. */
  private void doubt() {
    out.outline(
        Pen.at(x, y + 1.05 * r).to(x - 1.1 * r, y - 0.9 * r).toX(x + 1.1 * r).close(),
        Role.PLATE,
        line);
    bar(y - 0.62 * r, y + 0.10 * r);
    out.disc(x, y + 0.42 * r, 0.15 * r, Role.INK);
  }

  private void bar(double from, double to) {
    out.slab(x - 0.12 * r, from, 0.24 * r, to - from, Role.INK);
  }

  /** A square with a heavy cross. */
  private void cross() {
    square(Role.PLATE);
    double arm = 0.5 * r;
    out.outline(
        Pen.at(x - arm, y - arm).to(x + arm, y + arm).move(x - arm, y + arm).to(x + arm, y - arm),
        Role.CROSS,
        0.28 * r);
  }

  /** A low box with a dash. */
  private void open() {
    double wide = 0.95 * r;
    double high = 0.62 * r;
    out.outline(
        Pen.at(x - wide, y - high).toX(x + wide).toY(y + high).toX(x - wide).close(),
        Role.PLATE,
        line);
    out.slab(x - 0.5 * r, y - 0.11 * r, r, 0.22 * r, Role.INK);
  }

  /** A tray that is open above. */
  private void tray() {
    out.outline(
        Pen.at(x - 0.95 * r, y - 0.8 * r)
            .toX(x - 0.7 * r)
            .toY(y + 0.6 * r)
            .toX(x + 0.7 * r)
            .toY(y - 0.8 * r)
            .toX(x + 0.95 * r)
            .toY(y + 0.9 * r)
            .toX(x - 0.95 * r)
            .close(),
        Role.PLATE,
        line);
  }
}
