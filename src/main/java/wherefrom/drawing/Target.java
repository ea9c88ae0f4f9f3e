package wherefrom.drawing;

import java.util.List;
import java.util.function.Function;
import wherefrom.parts.Place;

/** What a finger means that touches a drawing. */
public sealed interface Target {

  /** What the function for its kind makes of it. */
  <R> R match(
      Function<Whole, R> whole,
      Function<Cylinder, R> cylinder,
      Function<Main, R> main,
      Function<Mains, R> mains,
      Function<Parts, R> parts);

  /** The drawing as a whole: its zones would be too small. It opens larger. */
  record Whole() implements Target {
    @Override
    public <R> R match(
        Function<Whole, R> whole,
        Function<Cylinder, R> cylinder,
        Function<Main, R> main,
        Function<Mains, R> mains,
        Function<Parts, R> parts) {
      return whole.apply(this);
    }
  }

  /** A cylinder: it opens large. */
  record Cylinder(int number) implements Target {
    @Override
    public <R> R match(
        Function<Whole, R> whole,
        Function<Cylinder, R> cylinder,
        Function<Main, R> main,
        Function<Mains, R> mains,
        Function<Parts, R> parts) {
      return cylinder.apply(this);
    }
  }

  /** A main bearing: the page of the mains opens. */
  record Main(int number) implements Target {
    @Override
    public <R> R match(
        Function<Whole, R> whole,
        Function<Cylinder, R> cylinder,
        Function<Main, R> main,
        Function<Mains, R> mains,
        Function<Parts, R> parts) {
      return main.apply(this);
    }
  }

  /** All mains, where each for itself would be too small. */
  record Mains() implements Target {
    @Override
    public <R> R match(
        Function<Whole, R> whole,
        Function<Cylinder, R> cylinder,
        Function<Main, R> main,
        Function<Mains, R> mains,
        Function<Parts, R> parts) {
      return mains.apply(this);
    }
  }

  /** A part, or a few that lie together: where there are several they open as a list. */
  record Parts(List<Place> places) implements Target {
    public Parts {
      places = List.copyOf(places);
    }

    @Override
    public <R> R match(
        Function<Whole, R> whole,
        Function<Cylinder, R> cylinder,
        Function<Main, R> main,
        Function<Mains, R> mains,
        Function<Parts, R> parts) {
      return parts.apply(this);
    }
  }
}
