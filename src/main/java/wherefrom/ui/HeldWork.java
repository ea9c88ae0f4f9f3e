package wherefrom.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;

/**
 * Work in the background that waits, in its order, until it is let go: nothing takes processor time
 * from the window's first picture.
 */
final class HeldWork implements Executor {
  private final Executor workers;
  private final List<Runnable> waiting = new ArrayList<>();
  private boolean free;

  HeldWork(Executor workers) {
    this.workers = workers;
  }

  @Override
  public synchronized void execute(Runnable work) {
    if (free) {
      workers.execute(work);
    } else {
      waiting.add(work);
    }
  }

  /** What waits begins, and nothing waits from now on. */
  synchronized void letGo() {
    free = true;
    waiting.forEach(workers::execute);
    waiting.clear();
  }
}
