package wherefrom.ui;

import java.util.concurrent.Callable;
import java.util.concurrent.TimeoutException;
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
}
