package wherefrom.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/** One column of a cylinder drawn large: its box, and what was drawn in it so far. */
final class ZoomColumn {
  /** The side of a mark on a part that is drawn large. */
  static final double MARK = 50;

  private static final double USUAL_HEIGHT = 600;
  private static final double LEAST_SHARE = 0.66;

  private static final double RING = 52;
  private static final double ARROW = 68;
  private static final double USUAL_WIDTH = 336;

  /** So much higher than wide a column may be before its rocker is no longer drawn the higher. */
  private static final double SLIM = 2.4;

  private static final double ROCKER = 0.23;

  private final Bounds box;
  private final double top;
  private final Asked asked;
  private final Glass glass;
  private final boolean named;
  private final ShapeCollector ground;
  private final ShapeCollector words;
  private final List<PartFigure> parts = new ArrayList<>();
  private final List<Anchor> anchors = new ArrayList<>();
  private final List<CarrierFigure> carriers = new ArrayList<>();

  /**
   * @param box the whole column
   * @param top of the parts, below the heading
   * @param named whether names stand beside the parts
   */
  ZoomColumn(Bounds box, double top, Asked asked, Glass glass, boolean named) {
    this.box = box;
    this.top = top;
    this.asked = asked;
    this.glass = glass;
    this.named = named;
    this.ground = new ShapeCollector(glass);
    this.words = new ShapeCollector(glass);
  }

  Glass glass() {
    return glass;
  }

  Asked asked() {
    return asked;
  }

  double left() {
    return box.x();
  }

  double right() {
    return box.right();
  }

  double width() {
    return box.width();
  }

  /** Height below the heading. */
  double height() {
    return box.bottom() - top;
  }

  /** The height that rocker and retainer follow: all of it but in a slim column. */
  double topHeight() {
    return Math.min(height(), SLIM * width());
  }

  /** The height of the rocker, below the heading. */
  double rockerHeight() {
    return ROCKER * topHeight();
  }

  /** A place across the column, as a part of its width. */
  double x(double share) {
    return box.x() + share * box.width();
  }

  /** A place down the column below the heading, as a part of that height. */
  double y(double share) {
    return top + share * height();
  }

  ShapeCollector ground() {
    return ground;
  }

  ShapeCollector words() {
    return words;
  }

  List<PartFigure> parts() {
    return parts;
  }

  List<CarrierFigure> carriers() {
    return carriers;
  }

  List<Anchor> anchors() {
    return anchors;
  }

  /**
   * Draws a part.
   *
   * @param spot where its mark sits
   * @param aside from there to the middle of the arrow that points at it
   */
  void part(Place place, Point spot, double aside, Consumer<ShapeCollector> draw) {
    ShapeCollector out = new ShapeCollector(glass);
    draw.accept(out);
    double length = glass.px(ARROW);
    Point tip = new Point(spot.x() + aside - length / 2, spot.y());
    Pointer pointer = Pointer.arrow(spot, glass.px(RING), tip, 0, length);
    parts.add(new PartFigure(place, out.shapes(), pointer));
    double side = mark(glass);
    anchors.add(Anchor.alone(place, spot, side, side, true));
  }

  /** The side of a mark: its letter grows with the person's text. */
  static double mark(Glass glass) {
    return glass.px(MARK) * glass.factor();
  }

  /** The size of names; those of a narrow column are no smaller. */
  private double nameSize() {
    return Math.max(glass.letter() * glass.factor(), glass.px(34) * share());
  }

  /**
   * How much larger than usual its words are: as the person set it, where the column is as wide.
   */
  static double growth(double width, Glass glass) {
    return Math.max(1, Math.min(glass.factor(), width / glass.px(USUAL_WIDTH)));
  }

  /** The same of a column that may be narrower than usual. */
  private double share() {
    return Math.min(glass.factor(), box.width() / glass.px(USUAL_WIDTH));
  }

  /**
   * Whether so many columns side by side leave names and marks their room, at the size that the
   * person set for text.
   */
  static boolean fits(Bounds room, int columns, Glass glass) {
    double least = LEAST_SHARE * glass.factor();
    return room.width() / columns >= least * glass.px(USUAL_WIDTH)
        && room.height() >= least * glass.px(USUAL_HEIGHT);
  }

  /** A heading above the parts. */
  void heading(String text, double usual, double baseline) {
    double size = glass.px(usual) * share();
    double fitting = Math.min(size, size * width() / Letters.width(text, size, true));
    double y = box.y() + baseline - fitting * Letters.CAPITAL / 2;
    words.add(
        new Shape.Words(
            x(0) + glass.px(6) * share(),
            y,
            text,
            Math.max(fitting, glass.letter() * glass.factor()),
            true,
            Shape.Side.BEGIN,
            Role.NUMBER));
  }

  /**
   * The part's name beside it, on a short line; left out where there is no room for it, and where
   * another kind is meant: its part may not be drawn.
   *
   * @param edge where the line begins at the part
   * @param at where the words begin, or end where they stand on its left
   * @param until how far the words may reach
   */
  void name(PartKind kind, String name, double edge, double at, double until, double y) {
    double room = Math.abs(until - at);
    double size = size(name, room);
    if (!named || !asked.isMeant(kind) || size == 0) {
      return;
    }
    boolean rightward = until > at;
    ground.line(edge, y, at + (rightward ? -1 : 1) * glass.px(8), y, Role.RULE);
    Shape.Side side = rightward ? Shape.Side.BEGIN : Shape.Side.END;
    words.words(at, y, name, size, side, Role.NAME);
  }

  /** As large as the person set it; 0 where that does not fit. */
  private double size(String name, double room) {
    double least = glass.letter() * glass.factor();
    for (double size : new double[] {nameSize(), least}) {
      if (Letters.width(name, size, false) <= room) {
        return size;
      }
    }
    return 0;
  }
}
