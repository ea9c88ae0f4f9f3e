package wherefrom.job;

import java.util.Set;
import wherefrom.job.entry.JobEntry;

/**
 * Something that answers to the kind of an entry. Each stands in a static field, so that a test
 * finds it: a new kind of entry fails that test until it is said who reads it.
 */
public sealed interface EntryReader permits EntryTable, EntryFold, EntryKinds {

  /** The kinds that it has something of its own for. */
  Set<Class<? extends JobEntry>> kinds();
}
