package wherefrom.job;

import java.time.Instant;
import java.util.function.Consumer;
import java.util.stream.Stream;
import wherefrom.job.entry.JobEntry;

/**
 * An entry as it stands in the logbook.
 *
 * @param sequence 1 for the first, then one up
 * @param time when it was written, UTC
 * @param by at which bench, and by whom
 */
public record LoggedEntry(long sequence, Instant time, By by, JobEntry entry) {

  /** An entry of bench 1, nobody named. */
  public LoggedEntry(long sequence, Instant time, JobEntry entry) {
    this(sequence, time, By.FIRST, entry);
  }

  /** The same place in the logbook with an entry that is read otherwise. */
  LoggedEntry with(JobEntry other) {
    return other == entry ? this : new LoggedEntry(sequence, time, by, other);
  }

  /** What it says, entry by entry: those of an act share its sequence and time. */
  public Stream<LoggedEntry> each() {
    return entry.each().stream().map(this::with);
  }

  /** Does something with each of them; a long logbook has hardly an act. */
  void forEach(Consumer<LoggedEntry> deed) {
    for (JobEntry one : entry.each()) {
      deed.accept(with(one));
    }
  }
}
