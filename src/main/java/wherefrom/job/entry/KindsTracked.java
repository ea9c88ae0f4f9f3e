package wherefrom.job.entry;

import java.util.Set;
import wherefrom.parts.PartKind;

/** More kinds of part are tracked from now on; their places get the next item numbers. */
public record KindsTracked(Set<PartKind> kinds) implements JobEntry {
  public KindsTracked {
    kinds = Set.copyOf(kinds);
  }

  @Override
  public boolean canBeTakenBack() {
    return false;
  }
}
