package wherefrom.drawing;

import java.util.List;
import wherefrom.parts.Place;

/** All that is drawn of one place in one view; it looks alike throughout. */
public record PartFigure(Place place, List<Shape> shapes, Pointer pointer) {
  public PartFigure {
    shapes = List.copyOf(shapes);
  }

  /** How far a point is from it: from the middle of the nearest of its shapes. */
  double distance(Point from) {
    return shapes.stream()
        .map(Shape::bounds)
        .mapToDouble(box -> new Point(box.middleX(), box.middleY()).distance(from))
        .min()
        .orElseThrow();
  }

  /** The box round it. */
  public Bounds bounds() {
    return shapes.stream().map(Shape::bounds).reduce(Bounds::with).orElseThrow();
  }
}
