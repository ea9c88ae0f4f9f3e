package wherefrom.job.entry;

import java.util.List;
import java.util.Set;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/**
 * More kinds of part are tracked from now on.
 *
 * @param first the item number of the first of their places; 0 where it was not said: the next one
 *     of the parts that stand
 * @param items what the numbers from there on stand for, in order; empty where it was not said:
 *     what {@link wherefrom.parts.FirstNumbering} says of the kinds
 */
public record KindsTracked(Set<PartKind> kinds, int first, List<Place> items) implements JobEntry {
  public KindsTracked {
    kinds = Set.copyOf(kinds);
    items = List.copyOf(items);
  }

  @Override
  public boolean canBeTakenBack() {
    return false;
  }
}
