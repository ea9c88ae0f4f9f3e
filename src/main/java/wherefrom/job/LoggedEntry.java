package wherefrom.job;

import java.time.Instant;
import wherefrom.job.entry.JobEntry;

/**
 * An entry as it stands in the logbook.
 *
 * @param sequence 1 for the first, then one up
 * @param time when it was written, UTC
 */
public record LoggedEntry(long sequence, Instant time, JobEntry entry) {}
