package wherefrom.files;

import java.util.concurrent.Callable;

/** Somebody who waits for long work and stops it after so many pieces were told of. */
public final class Stopping implements Progress.Watcher {
  private final int after;
  private int told;

  private Stopping(int after) {
    this.after = after;
  }

  /** Writes something. */
  @FunctionalInterface
  public interface Work {
    void run() throws Exception;
  }

  /** Does work and stops it when it has told this many times how far it is. */
  public static void after(int pieces, Work work) throws Exception {
    Callable<Integer> call =
        () -> {
          work.run();
          return 0;
        };
    Progress.watched(new Stopping(pieces), call);
  }

  @Override
  public void at(int done, int all) {
    told++;
  }

  @Override
  public boolean isStopped() {
    return told == after;
  }
}
