package wherefrom.drawing;

import java.util.List;
import java.util.stream.Stream;
import wherefrom.engine.Layout;
import wherefrom.parts.Orientation;
import wherefrom.parts.PartKind;

/** Two parts side by side, large: the wrong one in a red ring with the octagon, the right one. */
public final class KindPair {
  /** The letters on the tag NEW, in those of a caption. */
  private static final double TAG_LETTER = 1.28;

  /** The radius of the ring round a part, in the side of the part's square. */
  private static final double RING = 0.60;

  /** What the octagon needs beside the ring, in the same. */
  private static final double OCTAGON = 0.22;

  /** The radius of the ring round the end of a part alone, in the same. */
  private static final double END = 0.18;

  /** The height of a caption's line, in its letters. */
  private static final double CAPTION = 1.5;

  /**
   * One of the two.
   *
   * @param turned whether it is held end for end, or back to front
   * @param lower whether it is the half that lies open upward, such as a lower shell
   * @param caption below it; {@code NEW} stands on a tag
   */
  public record Side(PartKind kind, boolean turned, boolean lower, String caption) {
    public Side(PartKind kind, String caption) {
      this(kind, false, false, caption);
    }
  }

  private final Layout layout;
  private final Glass glass;
  private final ShapeCollector out;

  /** On the tag NEW; smaller, as in a caption, where the large one has no room. */
  private double tagLetter;

  /** Where one caption would touch the other's part, both are left out. */
  private boolean captioned;

  private KindPair(Layout layout, Glass glass) {
    this.layout = layout;
    this.glass = glass;
    this.out = new ShapeCollector(glass);
    this.tagLetter = TAG_LETTER * glass.letter();
  }

  /** Draws them; there is nothing to touch. */
  public static Drawing of(Layout layout, Side wrong, Side right, Bounds room, Glass glass) {
    KindPair pair = new KindPair(layout, glass);
    double half = room.width() / 2;
    boolean ends = wrong.turned() && wrong.kind().orientation() == Orientation.TOP_END;
    pair.caption(wrong, right, half);
    pair.side(wrong, new Bounds(room.x(), room.y(), half, room.height()), true, ends);
    pair.side(right, new Bounds(room.x() + half, room.y(), half, room.height()), false, ends);
    return new Drawing(room, glass, pair.out.shapes(), List.of(), List.of(), List.of(), List.of());
  }

  private void caption(Side wrong, Side right, double most) {
    captioned = areWithin(wrong, right, most);
    if (!captioned) {
      tagLetter = Math.max(glass.letter(), TAG_LETTER * glass.px(Glass.SMALL));
      captioned = areWithin(wrong, right, most);
    }
  }

  private boolean areWithin(Side wrong, Side right, double most) {
    return Stream.of(wrong, right).allMatch(side -> width(side) <= most);
  }

  private void side(Side side, Bounds room, boolean wrong, boolean ends) {
    double letter = glass.letter();
    double caption = CAPTION * letter;
    double high = room.height() - caption;
    double around = ends ? 1 : 2 * RING;
    double square = Math.min(high / around, room.width() / (2 * (RING + OCTAGON)));
    square = ends ? Math.min(high - glass.px(8), room.width()) : square;
    Bounds box =
        new Bounds(room.middleX() - square / 2, room.y() + (high - square) / 2, square, square);
    List<Shape> shapes = KindOutline.of(side.kind(), layout, box, glass);
    out.addAll(lying(side, shapes, box));
    double radius = ends ? END * square : RING * square;
    Point at = new Point(box.middleX(), ends ? box.y() + 0.9 * radius : box.middleY());
    out.addAll(
        wrong
            ? Pointing.wrong(at, radius, new Point(0.75, ends ? -0.1 : -0.75), glass)
            : Pointing.ring(at, radius, glass));
    double below = ends ? box.bottom() : at.y() + radius;
    double y = Math.min(room.bottom() - caption / 2, below + caption);
    if (captioned) {
      caption(side.caption(), room.middleX(), y, letter);
    }
  }

  /** As it is held: an end that is turned goes up, what is back to front is seen in a mirror. */
  private static List<Shape> lying(Side side, List<Shape> shapes, Bounds box) {
    boolean ends = side.turned() && side.kind().orientation() == Orientation.TOP_END;
    return Turning.of(shapes, box, side.turned(), ends || side.lower());
  }

  private double width(Side side) {
    String words = side.caption();
    boolean onTag = words.equals(Sign.NEW.letter());
    return onTag
        ? Letters.width(words, tagLetter, true) + tagLetter
        : Letters.width(words, glass.letter(), false);
  }

  private void caption(String words, double x, double y, double letter) {
    if (words.equals(Sign.NEW.letter())) {
      out.addAll(MarkShapes.of(Sign.NEW, new Point(x, y), tagLetter, glass).shapes());
    } else {
      out.words(x, y, words, letter, Shape.Side.MIDDLE, Role.NAME);
    }
  }
}
