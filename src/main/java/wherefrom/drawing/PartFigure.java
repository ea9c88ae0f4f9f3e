package wherefrom.drawing;

import java.util.List;
import wherefrom.parts.Place;

/** All that is drawn of one place in one view; it looks alike throughout. */
public record PartFigure(Place place, List<Shape> shapes, Pointer pointer) {
  public PartFigure {
    shapes = List.copyOf(shapes);
  }

  /** The box round it. */
  public Bounds bounds() {
    return shapes.stream().map(Shape::bounds).reduce(Bounds::with).orElseThrow();
  }
}
