package wherefrom.job;

import java.time.Instant;
import java.util.function.Consumer;
import java.util.stream.Stream;
import wherefrom.job.entry.Act;
import wherefrom.job.entry.JobEntry;

/**
 * An entry as it stands in the logbook.
 *
 * @param sequence 1 for the first, then one up
 * @param time when it was written, UTC
 */
public record LoggedEntry(long sequence, Instant time, JobEntry entry) {

  /** What it says, entry by entry: those of an act share its sequence and time. */
  public Stream<LoggedEntry> each() {
    return entry instanceof Act act
        ? act.entries().stream().map(part -> new LoggedEntry(sequence, time, part))
        : Stream.of(this);
  }

  /** Does something with each of them; a long logbook has hardly an act. */
  void forEach(Consumer<LoggedEntry> deed) {
    if (entry instanceof Act) {
      each().forEach(deed);
    } else {
      deed.accept(this);
    }
  }
}
