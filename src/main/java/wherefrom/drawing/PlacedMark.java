package wherefrom.drawing;

import java.util.List;

/**
 * A mark where it is drawn.
 *
 * @param at its middle
 * @param side of the box that it takes, in the drawing's unit
 */
public record PlacedMark(Sign sign, Point at, double side, List<Shape> shapes) {
  public PlacedMark {
    shapes = List.copyOf(shapes);
  }
}
