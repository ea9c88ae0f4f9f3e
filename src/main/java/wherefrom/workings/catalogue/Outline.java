package wherefrom.workings.catalogue;

import java.util.List;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;

/**
 * A chamber's opening traced onto squared paper: the corners of its outline in mm, in order round
 * it.
 */
public record Outline(List<Corner> corners) {

  /** One corner, in mm. */
  public record Corner(double across, double up) {}

  /**
   * @throws IllegalArgumentException where there are fewer than three corners
   */
  public Outline {
    corners = List.copyOf(corners);
    if (corners.size() < 3) {
      throw new IllegalArgumentException("an outline has at least three corners");
    }
  }

  /** The area inside, by the surveyor's rule; the way round does not matter. */
  public Amount area() {
    double twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      Corner here = corners.get(i);
      Corner next = corners.get((i + 1) % corners.size());
      twice += here.across() * next.up() - next.across() * here.up();
    }
    return Amount.of(Math.abs(twice) / 2, Unit.SQUARE_MILLIMETRE);
  }
}
