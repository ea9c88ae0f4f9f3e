package wherefrom.drawing;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wherefrom.engine.MainSpot;
import wherefrom.engine.Spot;
import wherefrom.parts.Place;

/** What a finger means that touches a drawing. */
public sealed interface Target {

  /** What the function for its kind makes of it. */
  default <R> R match(
      Function<Whole, R> whole,
      Function<Cylinder, R> cylinder,
      Function<Main, R> main,
      Function<Mains, R> mains,
      Function<Parts, R> parts) {
    if (this instanceof Whole one) {
      return whole.apply(one);
    }
    if (this instanceof Cylinder one) {
      return cylinder.apply(one);
    }
    if (this instanceof Main one) {
      return main.apply(one);
    }
    if (this instanceof Mains one) {
      return mains.apply(one);
    }
    return parts.apply((Parts) this);
  }

  /** Whether a place lies in it. */
  default boolean holds(Place place) {
    Spot spot = place.spot();
    return match(
        whole -> true,
        cylinder -> spot.findCylinder().equals(Optional.of(cylinder.number())),
        main -> spot instanceof MainSpot at && at.number() == main.number(),
        mains -> spot instanceof MainSpot,
        parts -> parts.places().contains(place));
  }

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
