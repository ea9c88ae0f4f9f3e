package wherefrom.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import wherefrom.parts.Place;

/**
 * The rings of a stop: red with the octagon beside it at the wrong place, black at the right one.
 * The octagon covers neither a number, nor a name, nor the other ring.
 */
public final class StopRings {
  /**
   * Where the octagon may stand, in radii from the ring's middle; the first that is free is. It
   * touches the ring, so that it is read with it, and leaves what is ringed to be seen.
   */
  private static final List<Point> ASIDE =
      List.of(
          new Point(1.5, -0.4),
          new Point(1.5, 0.4),
          new Point(1.1, -0.95),
          new Point(0.95, -1.1),
          new Point(0.45, -1.45),
          new Point(-1.5, -0.4),
          new Point(-1.5, 0.4),
          new Point(-0.95, -1.1),
          new Point(0, -1.6),
          new Point(0, 1.6),
          new Point(1.7, -0.1),
          new Point(-1.7, -0.1),
          new Point(0.95, -0.35),
          new Point(-0.95, 0.35));

  /** What it keeps from numbers, from names and from the other ring: its own line, and air. */
  private static final double FREE = 4;

  private final Drawing drawing;
  private final List<Bounds> taken = new ArrayList<>();

  private StopRings(Drawing drawing) {
    this.drawing = drawing;
    drawing.words().stream()
        .filter(shape -> shape.role() == Role.NUMBER || shape.role() == Role.NAME)
        .map(Shape::bounds)
        .forEach(taken::add);
  }

  /** The shapes; a place that the drawing does not show has none. */
  public static List<Shape> of(Drawing drawing, Set<Place> wrong, Set<Place> right) {
    StopRings rings = new StopRings(drawing);
    List<Shape> shapes = new ArrayList<>();
    for (Place place : right) {
      drawing.find(place).ifPresent(figure -> shapes.addAll(rings.right(figure.pointer())));
    }
    for (Place place : wrong) {
      drawing.find(place).ifPresent(figure -> shapes.addAll(rings.wrong(figure.pointer())));
    }
    return shapes;
  }

  private List<Shape> right(Pointer at) {
    double radius = at.radius();
    taken.add(new Bounds(at.at().x(), at.at().y(), 0, 0).grown(radius));
    return Pointing.ring(at.at(), radius, drawing.glass());
  }

  private List<Shape> wrong(Pointer at) {
    Point aside = ASIDE.stream().filter(one -> isFree(at, one)).findFirst().orElse(ASIDE.get(0));
    return Pointing.wrong(at.at(), at.radius(), aside, drawing.glass());
  }

  private boolean isFree(Pointer at, Point aside) {
    double x = at.at().x() + aside.x() * at.radius();
    double y = at.at().y() + aside.y() * at.radius();
    Bounds octagon =
        new Bounds(x, y, 0, 0).grown(Pointing.octagon(at.radius(), drawing.glass()) / 2);
    double free = drawing.glass().px(FREE);
    return taken.stream().allMatch(box -> box.gapTo(octagon) >= free);
  }
}
