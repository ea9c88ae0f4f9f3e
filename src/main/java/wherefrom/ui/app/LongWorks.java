package wherefrom.ui.app;

import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.LongSupplier;
import javafx.application.Platform;
import wherefrom.files.Progress;
import wherefrom.ui.controls.Ticker;

/**
 * Shows long work beside the window: a bar, a count, a key that stops it, once it takes a while.
 */
final class LongWorks {
  /** How often work that tells nothing is looked after. */
  private static final long LOOK_MS = 250;

  private final WindowFrame front;
  private final LongSupplier nanos;

  LongWorks(WindowFrame front, LongSupplier nanos) {
    this.front = front;
    this.nanos = nanos;
  }

  /** Work that is going to begin. */
  LongWork of(String title) {
    AtomicReference<Runnable> news = new AtomicReference<>(() -> {});
    LongWork work = new LongWork(title, nanos, () -> Platform.runLater(news.get()));
    news.set(() -> front.working(work));
    return work;
  }

  /** Shows work that has begun, though it may tell nothing for long. On the window's thread. */
  void follow(LongWork work) {
    if (!work.isEnded()) {
      work.follow(Ticker.WINDOW.repeat(LOOK_MS, () -> show(work)));
    }
  }

  private void show(LongWork work) {
    if (work.isLong()) {
      front.working(work);
    }
  }

  /** Work has ended. On the window's thread. */
  void end(LongWork work) {
    front.ended(work);
  }

  /**
   * Does work on this thread, which is not the window's, while the window shows how far it is.
   *
   * @throws java.util.concurrent.CancellationException where it was stopped
   */
  <T> T watched(String title, Callable<T> call) throws Exception {
    LongWork work = of(title);
    onWindow(() -> follow(work));
    try {
      return Progress.watched(work, call);
    } finally {
      onWindow(() -> end(work));
    }
  }

  static void onWindow(Runnable deed) {
    if (Platform.isFxApplicationThread()) {
      deed.run();
    } else {
      Platform.runLater(deed);
    }
  }
}
