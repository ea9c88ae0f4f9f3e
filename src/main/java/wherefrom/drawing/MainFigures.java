package wherefrom.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import wherefrom.engine.MainSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/** The main bearings of the engine seen from below, with caps or in a split case. */
final class MainFigures {
  private final EngineGeometry at;
  private final double pitch;
  private final ShapeCollector ground;
  private final ShapeCollector words;
  private final List<PartFigure> parts = new ArrayList<>();
  private final List<Anchor> anchors = new ArrayList<>();

  MainFigures(EngineGeometry at, ShapeCollector ground, ShapeCollector words) {
    this.at = at;
    this.pitch = at.mains().drawnPitch();
    this.ground = ground;
    this.words = words;
    for (int main = 1; main <= at.mains().count(); main++) {
      if (at.layout().mainCaps()) {
        capped(main);
      } else {
        split(main);
      }
      foot(main);
    }
  }

  List<PartFigure> parts() {
    return parts;
  }

  List<Anchor> anchors() {
    return anchors;
  }

  private static Place shell(int main, ShellHalf half) {
    return new Place(PartKind.MAIN_SHELL, new MainSpot(main, half));
  }

  private void capped(int main) {
    double r = EngineGeometry.MAIN_RADIUS * pitch;
    double x = at.mains().x(main);
    double axis = at.axis();
    Point end = at.mainView(main);
    Place cap = new Place(PartKind.MAIN_CAP, new MainSpot(main, ShellHalf.LOWER));
    Place lower = shell(main, ShellHalf.LOWER);
    Place upper = shell(main, ShellHalf.UPPER);
    ground.line(x, axis + 0.40 * pitch, x, end.y() - 1.48 * r, Role.LEADER);
    new BearingShapes(ground).block(end, r, BearingShapes.GAP, Role.METAL);
    figure(cap, end, out -> cap(out, main, x, end, r));
    figure(upper, end, out -> out.upperShell(end, r, BearingShapes.GAP));
    figure(lower, end, out -> out.lowerShell(end, r, BearingShapes.GAP));
    Point middle = new Point(x, axis);
    List<Anchor.Held> held =
        List.of(
            Anchor.Held.at(cap, middle), Anchor.Held.at(lower, end), Anchor.Held.at(upper, end));
    anchors.add(new Anchor(held, middle, 0.16 * pitch, MarkShapes.side(at), false));
  }

  private void cap(BearingShapes out, int main, double x, Point end, double r) {
    out.mainCap(end, r, BearingShapes.GAP);
    out.mainCapPlan(x, at.axis(), pitch);
    if (at.layout().thrustMain() == main) {
      out.thrustFlanges(x, at.axis(), pitch);
    }
  }

  /** Half a shell in either half of the case; the left half lies above. */
  private void split(int main) {
    double r = 0.15 * pitch;
    double x = at.mains().x(main);
    List<Place> halves = List.of(shell(main, ShellHalf.UPPER), shell(main, ShellHalf.LOWER));
    List<Anchor.Held> held = new ArrayList<>();
    for (Place half : halves) {
      boolean left = half.equals(halves.get(0));
      double y = at.axis() + (left ? -0.30 : 0.30) * at.pitch();
      ground.outline(Pen.at(x - r, y).arc(r, r, left, x + r, y).close(), Role.OPENING);
      Point middle = new Point(x, y + (left ? -0.5 : 0.5) * r);
      figure(half, middle, out -> out.shell(x, y, r, left));
      held.add(Anchor.Held.at(half, middle));
    }
    if (at.layout().thrustMain() == main) {
      new BearingShapes(ground).thrustFlanges(x, at.axis(), pitch);
    }
    Point shared = new Point(x, at.axis());
    anchors.add(new Anchor(held, shared, 0.13 * pitch, MarkShapes.side(at), false));
  }

  private void figure(Place place, Point middle, Consumer<BearingShapes> draw) {
    ShapeCollector out = new ShapeCollector(at.glass());
    draw.accept(new BearingShapes(out));
    double ring = Math.max(at.glass().px(27), 0.22 * pitch);
    parts.add(new PartFigure(place, out.shapes(), Pointer.ring(middle, ring)));
  }

  /** The main's name below the pan rail, or the line to its key. */
  private void foot(int main) {
    double x = at.mains().x(main);
    double rail = EngineZones.rail(at);
    switch (at.foot()) {
      case NAMES ->
          name(main, x, rail + BelowPanRail.NAMES.height(at.glass()) / 2 + at.glass().px(3));
      case KEYS -> {
        if (EngineZones.hasKeyForEachMain(at)) {
          ground.line(x, rail, x, at.bounds().bottom() - at.glass().key(), Role.RULE);
        }
      }
      case NONE -> {}
    }
  }

  /** Where names would touch, the first and the last stand alone. */
  private void name(int main, double x, double y) {
    double least = Math.min(at.glass().letter(), at.glass().px(Glass.SMALL));
    double size = least * at.glass().factor();
    double wide = Letters.width("M17", size, true);
    int count = at.mains().count();
    double last = Math.min(at.mains().x(count), at.bounds().right() - wide / 2);
    double first = Math.max(at.mains().x(1), at.bounds().x() + wide / 2);
    boolean free =
        wide < at.mains().spacing()
            && at.mains().x(Math.min(2, count)) - first > wide
            && last - at.mains().x(Math.max(1, count - 1)) > wide;
    if (main == 1 || main == count || free) {
      double inside = Math.max(first, Math.min(x, last));
      words.words(inside, y, "M" + main, size, Role.NUMBER);
    }
  }
}
