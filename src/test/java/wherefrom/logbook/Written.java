package wherefrom.logbook;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import wherefrom.job.By;
import wherefrom.job.Logbook;
import wherefrom.job.LoggedEntry;
import wherefrom.job.NewEntry;
import wherefrom.job.entry.JobEntry;

/** Jobs on disk that no shelf would begin. */
public final class Written {
  private Written() {}

  /** A job with these entries, closed again. */
  public static void job(Path folder, Clock clock, JobEntry... entries) {
    try (LogbookFile logbook = LogbookFile.create(folder)) {
      for (JobEntry entry : entries) {
        append(logbook, clock.instant(), entry);
      }
    }
  }

  /** Writes an entry of bench 1, whatever was written before it. */
  public static LoggedEntry append(Logbook logbook, Instant time, JobEntry entry) {
    NewEntry written = new NewEntry(logbook.newAct(), time, By.FIRST, entry);
    int before = logbook.entries().size();
    logbook.append(before, written);
    return written.at(before + 1L);
  }
}
