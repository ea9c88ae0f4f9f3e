package wherefrom.ui.app;

import java.util.Optional;
import wherefrom.job.OpenJob;
import wherefrom.job.UnsentException;

/**
 * What was sent while the store was out of reach, to be done again when it is back: by the job that
 * it was done on, and by no other.
 */
final class UnsentWork {
  /**
   * What waits.
   *
   * @param said when it was sent
   */
  record Kept(OpenJob job, WindowWork.Work work, UnsentException said) {}

  private Optional<Kept> kept = Optional.empty();

  /**
   * Keeps the first: what was asked for since was never sent.
   *
   * @return whether this is what waits now
   */
  boolean keep(Kept sent) {
    boolean first = kept.isEmpty();
    if (first) {
      kept = Optional.of(sent);
    }
    return first;
  }

  /** Hands out what waits for this job; then nothing waits. */
  Optional<Kept> take(OpenJob job) {
    Optional<Kept> waits = kept.filter(one -> one.job() == job);
    if (waits.isPresent()) {
      kept = Optional.empty();
    }
    return waits;
  }
}
