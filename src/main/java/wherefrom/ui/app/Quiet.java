package wherefrom.ui.app;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import wherefrom.job.OpenJob;

/** Whether nobody has worked on a job for a while, whatever was done to the clock meanwhile. */
final class Quiet {
  private static final Duration WHILE = Duration.ofMinutes(2);

  /** How far a job was, and when that was first seen. */
  private record Seen(Path job, long sequence, Instant time) {}

  private Optional<Seen> last = Optional.empty();

  /**
   * To be asked every now and then.
   *
   * @param now by the clock as it goes now
   */
  boolean is(OpenJob job, Instant now) {
    Instant entry = job.history().get(job.history().size() - 1).time();
    Instant since = entry.isAfter(now) ? seen(job, now) : entry;
    return !since.plus(WHILE).isAfter(now);
  }

  /**
   * The last entry was written before the clock was put back: it is counted from when it was seen.
   */
  private Instant seen(OpenJob job, Instant now) {
    Optional<Seen> before =
        last.filter(seen -> seen.job().equals(job.folder()))
            .filter(seen -> seen.sequence() == job.sequence())
            .filter(seen -> !seen.time().isAfter(now));
    last = Optional.of(before.orElseGet(() -> new Seen(job.folder(), job.sequence(), now)));
    return last.map(Seen::time).orElse(now);
  }
}
