package wherefrom.job.entry;

import java.util.Set;
import wherefrom.engine.Layout;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;

/**
 * A job begins. Its places get the item numbers 1, 2, 3… in the order of {@link
 * wherefrom.parts.Places#of}. The engine number tells its tags from every other job's.
 */
public record JobOpened(
    String name, int engine, Layout layout, Set<PartKind> kinds, UnitSystem units)
    implements JobEntry {
  public JobOpened {
    kinds = Set.copyOf(kinds);
  }

  @Override
  public boolean canBeTakenBack() {
    return false;
  }
}
