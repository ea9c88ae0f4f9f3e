package wherefrom.job;

import java.util.Set;
import wherefrom.job.entry.JobEntry;

/** Kinds of entries that are the same in one respect. */
public record EntryKinds(Set<Class<? extends JobEntry>> kinds) implements EntryReader {
  public EntryKinds {
    kinds = Set.copyOf(kinds);
  }

  /** Whether an entry is of one of them. */
  boolean have(JobEntry entry) {
    return kinds.contains(entry.getClass());
  }
}
