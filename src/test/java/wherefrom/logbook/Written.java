package wherefrom.logbook;

import java.nio.file.Path;
import java.time.Clock;
import wherefrom.job.entry.JobEntry;

/** Jobs on disk that no shelf would begin. */
public final class Written {
  private Written() {}

  /** A job with these entries, closed again. */
  public static void job(Path folder, Clock clock, JobEntry... entries) {
    try (LogbookFile logbook = LogbookFile.create(folder)) {
      for (JobEntry entry : entries) {
        logbook.append(clock.instant(), entry);
      }
    }
  }
}
