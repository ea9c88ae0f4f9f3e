package wherefrom.ui.app;

import java.util.Optional;
import wherefrom.job.OpenJob;

/**
 * What was sent while the store was out of reach, to be done again when it is back: by the job that
 * it was done on, and by no other.
 */
final class UnsentWork {
  private record Kept(OpenJob job, WindowWork.Work work) {}

  private Optional<Kept> kept = Optional.empty();

  /**
   * Keeps the first: what was asked for since was never sent.
   *
   * @return whether this is what waits now
   */
  boolean keep(OpenJob job, WindowWork.Work work) {
    boolean first = kept.isEmpty();
    if (first) {
      kept = Optional.of(new Kept(job, work));
    }
    return first;
  }

  /** Hands out what waits for this job; then nothing waits. */
  Optional<WindowWork.Work> take(OpenJob job) {
    Optional<WindowWork.Work> work = kept.filter(one -> one.job() == job).map(Kept::work);
    if (work.isPresent()) {
      kept = Optional.empty();
    }
    return work;
  }
}
