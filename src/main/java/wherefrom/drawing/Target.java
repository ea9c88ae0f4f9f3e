package wherefrom.drawing;

import java.util.List;
import wherefrom.parts.Place;

/** What a finger means that touches a drawing. */
public sealed interface Target {

  /** The drawing as a whole: its zones would be too small. It opens larger. */
  record Whole() implements Target {}

  /** A cylinder: it opens large. */
  record Cylinder(int number) implements Target {}

  /** A main bearing: the page of the mains opens. */
  record Main(int number) implements Target {}

  /** All mains, where each for itself would be too small. */
  record Mains() implements Target {}

  /** A part, or a few that lie together: where there are several they open as a list. */
  record Parts(List<Place> places) implements Target {
    public Parts {
      places = List.copyOf(places);
    }
  }
}
