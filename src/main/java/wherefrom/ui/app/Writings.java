package wherefrom.ui.app;

import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.logging.Logger;

/**
 * Work away from the window's thread that writes what a person wants to keep. The program does not
 * end in the middle of it: an interrupt would close the file that is being written.
 */
public final class Writings {
  private static final Logger LOGGER = Logger.getLogger("wherefrom");

  private final Map<Long, CompletableFuture<Boolean>> open = new ConcurrentHashMap<>();
  private final AtomicLong begun = new AtomicLong();

  /** The same work, waited for from now on, until it has ended well or badly. */
  public <T> Callable<T> of(Callable<T> work) {
    CompletableFuture<Boolean> end = new CompletableFuture<>();
    long number = begun.incrementAndGet();
    open.put(number, end);
    return () -> {
      try {
        return work.call();
      } finally {
        open.remove(number);
        end.complete(true);
      }
    };
  }

  /**
   * Waits until all that was begun has ended.
   *
   * @param seconds how long at most
   * @return whether nothing is being written any more
   */
  public boolean finish(long seconds) {
    try {
      CompletableFuture.allOf(open.values().toArray(CompletableFuture<?>[]::new))
          .get(seconds, TimeUnit.SECONDS);
      return true;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException | TimeoutException e) {
      LOGGER.warning("The program ends while something is being written");
    }
    return false;
  }
}
