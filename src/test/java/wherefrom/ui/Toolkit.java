package wherefrom.ui;

import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** Starts the toolkit once and runs work on the window's thread. */
public final class Toolkit {
  private Toolkit() {}

  /** Runs work on the window's thread and gives what it gave, or throws what it threw. */
  public static <T> T on(Callable<T> work) {
    try {
      FxToolkit.registerPrimaryStage();
    } catch (TimeoutException e) {
      throw new IllegalStateException(e);
    }
    return WaitForAsyncUtils.waitForAsyncFx(60_000, work);
  }

  /**
   * Looks at each pulse of the window whether something is so, and waits until it is.
   *
   * @param so is asked on the window's thread
   * @return whether it came to be so within twenty seconds
   */
  public static boolean until(BooleanSupplier so) {
    CountDownLatch seen = new CountDownLatch(1);
    AnimationTimer watch = on(() -> watch(so, seen));
    try {
      return seen.await(20, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    } finally {
      Platform.runLater(watch::stop);
    }
  }

  private static AnimationTimer watch(BooleanSupplier so, CountDownLatch seen) {
    AnimationTimer watch =
        new AnimationTimer() {
          @Override
          public void handle(long now) {
            if (so.getAsBoolean()) {
              stop();
              seen.countDown();
            }
          }
        };
    watch.start();
    return watch;
  }
}
