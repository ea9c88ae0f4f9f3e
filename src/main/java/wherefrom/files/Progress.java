package wherefrom.files;

import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;

/**
 * How far long work is. Whoever waits for it watches the thread that does it; whoever does it tells
 * after each piece, whether anybody watches or not.
 */
public final class Progress {

  /** Whoever waits. Asked on the thread that works. */
  public interface Watcher {
    /**
     * A piece is done.
     *
     * @param done so many of all
     */
    void at(int done, int all);

    /** Whether the work is to stop at the next piece. */
    boolean isStopped();
  }

  private static final ThreadLocal<Optional<Watcher>> WATCHER =
      ThreadLocal.withInitial(Optional::empty);

  private Progress() {}

  /** Does work while somebody watches. */
  public static <T> T watched(Watcher watcher, Callable<T> work) throws Exception {
    Optional<Watcher> before = WATCHER.get();
    WATCHER.set(Optional.of(watcher));
    try {
      return work.call();
    } finally {
      WATCHER.set(before);
    }
  }

  /**
   * Tells that a piece is done.
   *
   * @throws CancellationException where the work is to stop; what is half done is undone by whoever
   *     does it
   */
  public static void step(int done, int all) {
    Optional<Watcher> watcher = WATCHER.get();
    if (watcher.isPresent()) {
      watcher.get().at(done, all);
      if (watcher.get().isStopped()) {
        throw new CancellationException("Stopped.");
      }
    }
  }
}
