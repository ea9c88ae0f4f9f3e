package wherefrom.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import wherefrom.engine.Layout;
import wherefrom.engine.MainSpot;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.engine.Spot;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/** One bearing, rod or main, seen from the end and pulled apart, alone and large. */
public final class OneBearing {
  /** How far each half is moved, in the radius: farther than in the engine. */
  private static final double GAP = 0.30;

  private static final double HIGH = 3.20;
  private static final double WIDE = 2.60;

  private final Asked asked;
  private final Glass glass;
  private final Point at;
  private final double r;
  private final ShapeCollector ground;
  private final List<PartFigure> parts = new ArrayList<>();
  private final List<Anchor> anchors = new ArrayList<>();

  private OneBearing(Bounds room, Asked asked, Glass glass) {
    this.asked = asked;
    this.glass = glass;
    this.at = new Point(room.middleX(), room.middleY());
    this.r = Math.min(room.height() / HIGH, room.width() / WIDE);
    this.ground = new ShapeCollector(glass);
  }

  /**
   * Draws it; there is nothing to touch.
   *
   * @param spot either half of a rod's or a main's bearing
   */
  public static Drawing of(Layout layout, Spot spot, Bounds room, Asked asked, Glass glass) {
    OneBearing bearing = new OneBearing(room, asked, glass);
    String name =
        spot.match(
            OneBearing::hasNoHalves,
            OneBearing::hasNoHalves,
            rod -> bearing.rod(rod.cylinder()),
            main -> bearing.main(layout, main.number()),
            OneBearing::hasNoHalves);
    ShapeCollector words = new ShapeCollector(glass);
    double size = Math.max(glass.letter(), Math.min(glass.px(51), 0.55 * bearing.r));
    words.words(bearing.at.x(), bearing.at.y(), name, size, Role.NUMBER);
    return new Drawing(
        room,
        glass,
        bearing.ground.shapes(),
        bearing.parts,
        words.shapes(),
        bearing.anchors,
        List.of());
  }

  private static String hasNoHalves(Spot spot) {
    throw new IllegalArgumentException("no bearing in halves: " + spot.words());
  }

  /** Draws a rod's bearing; its name on the drawing. */
  private String rod(int cylinder) {
    RodSpot upper = new RodSpot(cylinder, ShellHalf.UPPER);
    RodSpot lower = new RodSpot(cylinder, ShellHalf.LOWER);
    if (asked.isTracked(PartKind.ROD)) {
      part(new Place(PartKind.ROD, upper), -1, out -> out.fork(at, r, GAP, Role.BODY));
    } else {
      new BearingShapes(ground).fork(at, r, GAP, Role.METAL);
    }
    part(new Place(PartKind.ROD_CAP, lower), 1, out -> out.rodCap(at, r, GAP));
    part(new Place(PartKind.ROD_SHELL, upper), -1, out -> out.upperShell(at, r, GAP));
    part(new Place(PartKind.ROD_SHELL, lower), 1, out -> out.lowerShell(at, r, GAP));
    return String.valueOf(cylinder);
  }

  /** Draws a main bearing; its name on the drawing. */
  private String main(Layout layout, int main) {
    MainSpot upper = new MainSpot(main, ShellHalf.UPPER);
    MainSpot lower = new MainSpot(main, ShellHalf.LOWER);
    new BearingShapes(ground).block(at, r, GAP, Role.CAST);
    if (layout.mainCaps()) {
      part(new Place(PartKind.MAIN_CAP, lower), 1, out -> out.mainCap(at, r, GAP));
    } else {
      ShapeCollector flipped = new ShapeCollector(glass);
      new BearingShapes(flipped).caseHalf(at, r, GAP, Role.CAST);
      ground.addAll(flipped.shapes());
    }
    part(new Place(PartKind.MAIN_SHELL, upper), -1, out -> out.upperShell(at, r, GAP));
    part(new Place(PartKind.MAIN_SHELL, lower), 1, out -> out.lowerShell(at, r, GAP));
    return "M" + main;
  }

  private void part(Place place, int side, Consumer<BearingShapes> draw) {
    ShapeCollector out = new ShapeCollector(glass);
    draw.accept(new BearingShapes(out));
    Point middle = new Point(at.x(), at.y() + side * 1.10 * r);
    parts.add(new PartFigure(place, out.shapes(), Pointer.ring(middle, 0.5 * r)));
    double mark = Math.min(glass.px(ZoomColumn.MARK), 0.5 * r);
    anchors.add(Anchor.alone(place, middle, mark, mark, false));
  }
}
