package wherefrom.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import wherefrom.engine.CamBearingSpot;
import wherefrom.engine.LifterType;
import wherefrom.engine.Spots;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;
import wherefrom.parts.Home;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/**
 * The engine seen from above: springs, lifters, pushrods, rockers; and pivots, valves, retainers,
 * keepers or cam bearings where they are what is asked about, the kind or the one place.
 */
public final class EngineAbove {
  private static final List<PartKind> ALWAYS =
      List.of(PartKind.SPRING, PartKind.LIFTER, PartKind.PUSHROD, PartKind.ROCKER);

  /** The order in which they bear the tag of their place: what goes in last comes first. */
  private static final List<PartKind> TAG_ORDER =
      List.of(PartKind.ROCKER, PartKind.PUSHROD, PartKind.LIFTER, PartKind.SPRING);

  private static final double ARROW = 62;
  private static final double ARROW_SHARE = 0.36;

  /** It ends within the gap that is left free beside a drawing. */
  private static final double BEYOND = 16;

  private final EngineGeometry at;
  private final Asked asked;
  private final double pitch;
  private final Outward places;
  private final List<PartFigure> parts = new ArrayList<>();
  private final ShapeCollector numbers;
  private final List<Anchor> anchors = new ArrayList<>();

  private EngineAbove(EngineGeometry at, Asked asked) {
    this.at = at;
    this.asked = asked;
    this.pitch = at.pitch();
    this.places = at.outward();
    this.numbers = new ShapeCollector(at.glass());
  }

  public static Drawing of(EngineGeometry at, Asked asked) {
    EngineAbove engine = new EngineAbove(at, asked);
    ShapeCollector ground = new ShapeCollector(at.glass());
    List<CarrierFigure> carriers = AboveCastings.draw(ground, at);
    at.cylinders().forEach(engine::cylinder);
    Spots.camBearings(at.layout()).stream()
        .filter(spot -> asked.isDrawn(new Place(PartKind.CAM_BEARING, spot)))
        .forEach(engine::camBearing);
    return new Drawing(
        at.bounds(),
        at.glass(),
        ground.shapes(),
        engine.parts,
        engine.numbers.shapes(),
        engine.anchors,
        EngineZones.above(at),
        carriers);
  }

  private void cylinder(int cylinder) {
    for (ValveSide side : new ValveSide[] {ValveSide.EXHAUST, ValveSide.INTAKE}) {
      ValveSpot valve = new ValveSpot(cylinder, side);
      List<PartKind> kinds = new ArrayList<>(ALWAYS);
      kinds.addAll(small(valve));
      kinds.forEach(kind -> part(kind, valve));
      anchor(valve);
      if (at.isLettered()) {
        letter(valve);
      }
    }
    if (NumberFit.isWritten(at)) {
      number(cylinder);
    }
  }

  private void letter(ValveSpot valve) {
    double outside = places.stub() + SideLetters.row(at.glass()) / 2 / pitch;
    Point word = at.row(valve).at(outside, 0);
    String letters = SideLetters.of(valve.side());
    numbers.words(word.x(), word.y(), letters, SideLetters.size(at.glass()), Role.NAME);
  }

  private void number(int cylinder) {
    double across = at.isTwo() ? 0.015 : 0.01;
    double between = at.isShaft() ? places.cup() + across : places.stud() + 0.02;
    double outside = places.stub() + NumberFit.ROW * at.glass().letter() / 2 / pitch;
    Point number = at.row(cylinder).at(at.hasNumbersOutside() ? outside : between, 0);
    String digits = String.valueOf(cylinder);
    numbers.words(number.x(), number.y(), digits, NumberFit.size(at), Role.NUMBER);
  }

  /** The kinds that are drawn at a valve only because they are asked about. */
  private List<PartKind> small(ValveSpot valve) {
    return Stream.of(PartKind.values())
        .filter(kind -> kind.home() == Home.VALVE && !ALWAYS.contains(kind))
        .filter(kind -> asked.isDrawn(new Place(kind, valve)))
        .toList();
  }

  private void part(PartKind kind, ValveSpot valve) {
    ValveRow row = at.row(valve);
    ShapeCollector out = new ShapeCollector(at.glass());
    PlanShapes plan = new PlanShapes(out, pitch);
    switch (kind) {
      case SPRING -> plan.spring(row, places.valve());
      case LIFTER -> plan.lifter(row, places.lifter(), at.layout().lifters() == LifterType.ROLLER);
      case PUSHROD -> plan.pushrod(row, places.lifter() + 0.03, places.cup());
      case ROCKER -> plan.rocker(row, places, at.isShaft());
      default -> plan.small(kind, row.at(outward(kind), 0));
    }
    parts.add(new PartFigure(new Place(kind, valve), out.shapes(), pointer(kind, row)));
  }

  /** Where the middle of a part lies. */
  private double outward(PartKind kind) {
    return switch (kind) {
      case LIFTER -> places.lifter();
      case PUSHROD -> (places.lifter() + places.cup()) / 2;
      case ROCKER -> (places.cup() + places.valve()) / 2 - 0.06;
      case PIVOT -> places.stud();
      default -> places.valve();
    };
  }

  private Pointer pointer(PartKind kind, ValveRow row) {
    double radius = Math.max(at.glass().px(27), 0.20 * pitch);
    Point middle = row.at(outward(kind), 0);
    if (kind == PartKind.PUSHROD || kind == PartKind.LIFTER) {
      return Pointer.ring(middle, radius);
    }
    double from = row.outward() > 0 ? Math.PI / 2 : -Math.PI / 2;
    double tip = places.valve() + 0.17;
    double reach = (places.stub() - tip) * pitch + at.glass().px(BEYOND);
    double length = Math.min(Math.min(at.glass().px(ARROW), ARROW_SHARE * pitch), reach);
    return Pointer.arrow(middle, radius, row.at(tip, 0), from, length);
  }

  private void anchor(ValveSpot valve) {
    ValveRow row = at.row(valve);
    List<Anchor.Held> held = new ArrayList<>();
    List<PartKind> kinds = new ArrayList<>(TAG_ORDER);
    kinds.addAll(small(valve));
    for (PartKind kind : kinds) {
      double mark = kind == PartKind.ROCKER ? places.valve() + 0.02 : outward(kind);
      Place place = new Place(kind, valve);
      held.add(new Anchor.Held(place, row.at(mark, 0), row.at(outward(kind), 0)));
    }
    Point shared = row.at(places.cup(), 0);
    anchors.add(new Anchor(held, shared, 0.13 * pitch, MarkShapes.side(at), false));
  }

  private void camBearing(CamBearingSpot spot) {
    int count = at.layout().camBearings();
    double room = at.rear() - at.front() - 0.24 * pitch;
    double step = count == 1 ? room : room / (count - 1);
    double along = count == 1 ? 0.5 * room : (spot.number() - 1) * step;
    double x = at.front() + 0.12 * pitch + along;
    double y = at.axis() - (at.isTwo() ? 0 : places.lifter() * pitch);
    double wide = Math.min(0.12 * pitch, 0.8 * step);
    ShapeCollector out = new ShapeCollector(at.glass());
    double high = 0.26 * pitch;
    out.slab(x - wide / 2, y - high / 2, wide, high, wide / 4, Role.BODY);
    Point middle = new Point(x, y);
    Place place = new Place(PartKind.CAM_BEARING, spot);
    Pointer ring = Pointer.ring(middle, Math.max(at.glass().px(27), 0.20 * pitch));
    parts.add(new PartFigure(place, out.shapes(), ring));
    anchors.add(Anchor.alone(place, middle, 0.13 * pitch, MarkShapes.side(at), false));
  }
}
