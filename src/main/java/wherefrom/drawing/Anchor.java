package wherefrom.drawing;

import java.util.List;
import java.util.Set;
import wherefrom.parts.Place;

/**
 * Where the marks of places are put that share a spot of the drawing.
 *
 * @param held the places, in the order in which they bear the tag: of several that are out, the
 *     first does
 * @param shared where one tag stands for the first two places, when both are out
 * @param tag height of the small tag
 * @param mark side of a mark
 * @param all whether every state has its mark, as on the large drawings, or the exceptions alone
 */
public record Anchor(List<Held> held, Point shared, double tag, double mark, boolean all) {

  /**
   * A place.
   *
   * @param mark the middle of its mark
   * @param tag the middle of its tag
   */
  public record Held(Place place, Point mark, Point tag) {
    static Held at(Place place, Point spot) {
      return new Held(place, spot, spot);
    }
  }

  public Anchor {
    held = List.copyOf(held);
    if (held.isEmpty()) {
      throw new IllegalArgumentException("no place to mark");
    }
  }

  /** Whether it stands for one of these places. */
  public boolean holds(Set<Place> places) {
    return held.stream().map(Held::place).anyMatch(places::contains);
  }

  /** A place alone. */
  static Anchor alone(Place place, Point spot, double tag, double mark, boolean all) {
    return new Anchor(List.of(Held.at(place, spot)), spot, tag, mark, all);
  }
}
