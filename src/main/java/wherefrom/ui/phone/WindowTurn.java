package wherefrom.ui.phone;

import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import wherefrom.job.LogbookException;
import wherefrom.job.phone.JobTurn;

/** What phones do with the job is done on the window's thread, between two of its own deeds. */
final class WindowTurn implements JobTurn {
  private static final int WAIT_SECONDS = 10;

  private final Consumer<Runnable> window;

  /**
   * @param window runs something on the window's thread
   */
  WindowTurn(Consumer<Runnable> window) {
    this.window = window;
  }

  @Override
  public <T> T take(Callable<T> deed) throws Exception {
    AtomicBoolean begun = new AtomicBoolean();
    CompletableFuture<T> done = new CompletableFuture<>();
    window.accept(() -> run(deed, begun, done));
    try {
      return done.get(WAIT_SECONDS, TimeUnit.SECONDS);
    } catch (TimeoutException busy) {
      if (begun.compareAndSet(false, true)) {
        throw new LogbookException("The big screen is busy. Nothing was done.");
      }
      return done.get();
    } catch (ExecutionException e) {
      throw e.getCause() instanceof Exception fault ? fault : e;
    }
  }

  private static <T> void run(Callable<T> deed, AtomicBoolean begun, CompletableFuture<T> done) {
    if (begun.compareAndSet(false, true)) {
      try {
        done.complete(deed.call());
      } catch (Throwable fault) {
        // It is told where the deed came from.
        done.completeExceptionally(fault);
      }
    }
  }
}
