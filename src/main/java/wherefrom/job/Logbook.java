package wherefrom.job;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import wherefrom.job.entry.JobEntry;

/** The append-only record of one job. */
public interface Logbook extends AutoCloseable {

  /** The job's folder. */
  Path folder();

  /** Every entry that could be read, oldest first. */
  List<LoggedEntry> entries();

  /**
   * Writes an entry and forces it to disk before it returns.
   *
   * @throws LogbookException when it could not be written, or the logbook is open for reading only;
   *     the entry then does not count
   */
  LoggedEntry append(Instant time, JobEntry entry);

  /** What was noticed when the logbook was opened. */
  LogbookCondition condition();

  /** Lets go of the lock. */
  @Override
  void close();
}
