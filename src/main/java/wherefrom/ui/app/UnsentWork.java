package wherefrom.ui.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.UnsentException;
import wherefrom.job.entry.StopGiven;

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
  record Kept(OpenJob job, WindowWork.Work work, UnsentException said) {
    /**
     * What is left to do: all of it where it was not written; else what the press has beside the
     * act, unless somebody has gone on from there.
     */
    Optional<WindowWork.Work> left(Optional<LoggedEntry> written) {
      if (written.isEmpty()) {
        return Optional.of(work);
      }
      boolean over = !said.goesOn() || written.get().sequence() < job.sequence();
      boolean stop = written.get().entry() instanceof StopGiven;
      return over ? Optional.empty() : Optional.of(stop ? this::show : work);
    }

    /** Does the work for what it shows: the stop that it would give is given already. */
    private void show() throws IOException {
      try {
        job.asOne(
            () -> {
              run();
              return false;
            },
            kept -> kept);
      } catch (UncheckedIOException e) {
        throw e.getCause();
      }
    }

    private void run() {
      try {
        work.run();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

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
