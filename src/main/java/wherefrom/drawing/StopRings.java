package wherefrom.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wherefrom.parts.Place;

/**
 * The rings of a stop: red with the octagon beside it at the wrong place, black at the right one.
 * The octagon covers neither a number nor the other ring.
 */
public final class StopRings {
  /** Where the octagon may stand, in radii from the ring's middle; the first that is free is. */
  private static final List<Point> ASIDE =
      List.of(
          new Point(0.95, -0.35),
          new Point(0.95, 0.35),
          new Point(0.95, -0.75),
          new Point(0.95, -1.1),
          new Point(1.7, -0.1),
          new Point(-1.7, -0.1),
          new Point(-0.95, -0.35),
          new Point(-0.95, 0.35),
          new Point(0, -1.5),
          new Point(0, 1.5));

  /** So many sides of the ring are tried where it has no room on the ring, from above round. */
  private static final int SIDES = 16;

  /** The octagon with its frame and a little air, as a part of its side. */
  private static final double FRAMED = 1.2;

  private final Drawing drawing;
  private final List<Bounds> taken = new ArrayList<>();

  private StopRings(Drawing drawing) {
    this.drawing = drawing;
    drawing.words().stream()
        .filter(shape -> shape.role() == Role.NUMBER)
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
    double reach = 1 + half(at) / at.radius();
    Point aside =
        Stream.concat(ASIDE.stream(), off(reach))
            .filter(one -> isFree(at, one))
            .findFirst()
            .orElse(ASIDE.get(0));
    return Pointing.wrong(at.at(), at.radius(), aside, drawing.glass());
  }

  /** Off the ring, which a small drawing may have room for. */
  private static Stream<Point> off(double reach) {
    return IntStream.range(0, SIDES)
        .mapToObj(side -> 2 * Math.PI * side / SIDES)
        .map(turn -> new Point(-reach * Math.sin(turn), -reach * Math.cos(turn)));
  }

  private boolean isFree(Pointer at, Point aside) {
    double x = at.at().x() + aside.x() * at.radius();
    double y = at.at().y() + aside.y() * at.radius();
    Bounds octagon = new Bounds(x, y, 0, 0).grown(half(at));
    return taken.stream().allMatch(box -> box.gapTo(octagon) >= 0);
  }

  /** Half of what the octagon takes with its frame. */
  private double half(Pointer at) {
    return FRAMED * Pointing.octagon(at.radius(), drawing.glass()) / 2;
  }
}
