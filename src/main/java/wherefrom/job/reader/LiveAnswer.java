package wherefrom.job.reader;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What a frame of a live picture gives. */
public sealed interface LiveAnswer {

  /** What the function for its kind makes of it. */
  default <R> R match(
      Function<Nothing, R> nothing,
      Function<Read, R> read,
      Function<StillThere, R> stillThere,
      Function<Several, R> several) {
    if (this instanceof Nothing one) {
      return nothing.apply(one);
    }
    if (this instanceof Read one) {
      return read.apply(one);
    }
    if (this instanceof StillThere one) {
      return stillThere.apply(one);
    }
    return several.apply((Several) this);
  }

  /** Nothing to act on; the cause tells the person what would help, where that is known. */
  record Nothing(Optional<Unread.Cause> hint) implements LiveAnswer {}

  /** A tag has come into view and is read: said once, until it has left. */
  record Read(Sighting sighting) implements LiveAnswer {}

  /** The tag that was read is still in view. */
  record StillThere(Sighting sighting) implements LiveAnswer {}

  /** Several tags in view: the person must cover all but one. */
  record Several(List<Sighting> sightings) implements LiveAnswer {
    public Several {
      sightings = List.copyOf(sightings);
    }
  }
}
