package wherefrom.job;

import java.time.Instant;
import wherefrom.job.entry.JobEntry;

/**
 * An entry on its way into the logbook.
 *
 * @param act from {@link Logbook#newAct}: the same however often the act is sent, so that it is
 *     written once
 * @param time when the act was done, UTC
 */
public record NewEntry(long act, Instant time, By by, JobEntry entry) {

  /** The entry as it stands in the logbook. */
  public LoggedEntry at(long sequence) {
    return new LoggedEntry(sequence, time, by, entry);
  }
}
