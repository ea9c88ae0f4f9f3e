package wherefrom.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import wherefrom.engine.BoreSpot;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/**
 * The engine seen from below. On the crank lie the caps; beside it every bearing is seen from the
 * end, pulled apart. A piston is drawn, in the place of the end view, where pistons are asked
 * about, or of one piston.
 */
public final class EngineBelow {
  private static final double ROD = EngineGeometry.ROD_RADIUS;

  private final EngineGeometry at;
  private final Asked asked;
  private final boolean rods;
  private final double pitch;
  private final ShapeCollector ground;
  private final ShapeCollector words;
  private final List<PartFigure> parts = new ArrayList<>();
  private final List<Anchor> anchors = new ArrayList<>();

  private EngineBelow(EngineGeometry at, Asked asked) {
    this.at = at;
    this.asked = asked;
    this.rods = asked.isTracked(PartKind.ROD);
    this.pitch = at.pitch();
    this.ground = new ShapeCollector(at.glass());
    this.words = new ShapeCollector(at.glass());
  }

  public static Drawing of(EngineGeometry at, Asked asked) {
    EngineBelow engine = new EngineBelow(at, asked);
    BelowCastings.draw(engine.ground, at);
    Crank.draw(engine.ground, at);
    at.cylinders().forEach(engine::cylinder);
    MainFigures mains = new MainFigures(at, engine.ground, engine.words);
    engine.parts.addAll(mains.parts());
    engine.anchors.addAll(mains.anchors());
    return new Drawing(
        at.bounds(),
        at.glass(),
        engine.ground.shapes(),
        engine.parts,
        engine.words.shapes(),
        engine.anchors,
        EngineZones.below(at));
  }

  private void cylinder(int cylinder) {
    Point pin = at.rodCap(cylinder);
    Point end = at.rodView(cylinder);
    double edge = end.y() - at.sign(cylinder) * 1.50 * ROD * pitch;
    ground.line(pin.x(), pin.y(), end.x(), edge, Role.LEADER);
    boolean piston = asked.isDrawn(pistonOf(cylinder));
    if (piston) {
      piston(cylinder, end);
    } else {
      bearing(cylinder, pin, end);
    }
    double outside = EngineGeometry.RAIL_EDGE + NumberFit.ROW * at.glass().letter() / 2 / pitch;
    Point number = at.hasNumbersOutside() ? at.row(cylinder).at(outside, 0) : end;
    if ((!piston || at.hasNumbersOutside()) && NumberFit.isWritten(at)) {
      words.words(
          number.x(), number.y(), String.valueOf(cylinder), NumberFit.size(at), Role.NUMBER);
    }
  }

  private void bearing(int cylinder, Point pin, Point end) {
    double r = ROD * pitch;
    Place cap = new Place(PartKind.ROD_CAP, new RodSpot(cylinder, ShellHalf.LOWER));
    Place lower = new Place(PartKind.ROD_SHELL, new RodSpot(cylinder, ShellHalf.LOWER));
    Place upper = new Place(PartKind.ROD_SHELL, new RodSpot(cylinder, ShellHalf.UPPER));
    Place rod = new Place(PartKind.ROD, new RodSpot(cylinder, ShellHalf.UPPER));
    if (rods) {
      figure(rod, end, out -> out.fork(end, r, BearingShapes.GAP, Role.BODY));
    } else {
      new BearingShapes(ground).fork(end, r, BearingShapes.GAP, Role.METAL);
    }
    figure(
        cap,
        end,
        out -> {
          out.rodCapPlan(pin, pitch, at.isTwo() ? 0.098 : 0.13);
          out.rodCap(end, r, BearingShapes.GAP);
        });
    figure(upper, end, out -> out.upperShell(end, r, BearingShapes.GAP));
    figure(lower, end, out -> out.lowerShell(end, r, BearingShapes.GAP));
    Point beside = new Point(end.x() + away(end.x()) * 1.34 * r, end.y());
    anchors.add(
        new Anchor(
            List.of(
                Anchor.Held.at(cap, pin),
                Anchor.Held.at(lower, beside),
                Anchor.Held.at(upper, beside),
                Anchor.Held.at(rod, beside)),
            pin,
            0.13 * pitch,
            MarkShapes.side(at),
            false));
  }

  private void figure(Place place, Point end, Consumer<BearingShapes> draw) {
    ShapeCollector out = new ShapeCollector(at.glass());
    draw.accept(new BearingShapes(out));
    double ring = Math.max(at.glass().px(27), 0.27 * pitch);
    parts.add(new PartFigure(place, out.shapes(), Pointer.ring(end, ring)));
  }

  /** Away from the nearest main, so that what stands beside an end view covers none. */
  private int away(double x) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int main = 1; main <= at.mains().count(); main++) {
      double distance = at.mains().x(main) - x;
      nearest = Math.abs(distance) < Math.abs(nearest) ? distance : nearest;
    }
    return nearest > 0 ? -1 : 1;
  }

  private static Place pistonOf(int cylinder) {
    return new Place(PartKind.PISTON, new BoreSpot(cylinder));
  }

  private void piston(int cylinder, Point end) {
    ShapeCollector out = new ShapeCollector(at.glass());
    double wide = 0.44 * pitch;
    double high = 0.36 * pitch;
    Bounds box = new Bounds(end.x() - wide / 2, end.y() - high / 2, wide, high);
    new BottomEndShapes(out).piston(box);
    Place place = pistonOf(cylinder);
    parts.add(new PartFigure(place, out.shapes(), Pointer.ring(end, 0.28 * pitch)));
    double side = MarkShapes.side(at);
    anchors.add(Anchor.alone(place, end, 0.13 * pitch, side, false));
    if (!at.hasNumbersOutside()) {
      double size = NumberFit.size(at);
      double number = end.x() + away(end.x()) * (wide / 2 + 0.40 * size);
      words.words(number, end.y(), String.valueOf(cylinder), size, Role.NUMBER);
    }
  }
}
