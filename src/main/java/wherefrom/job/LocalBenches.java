package wherefrom.job;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.CopyOnWriteArrayList;

/** The benches of one program that work on one logbook, and who wants to hear of news. */
public final class LocalBenches {
  private final SortedSet<Integer> taken = new TreeSet<>();
  private final List<Runnable> watchers = new CopyOnWriteArrayList<>();
  private long acts;

  /** Takes a bench, or the next one that is free. */
  public synchronized int take(int wanted) {
    int bench = wanted;
    while (!taken.add(bench)) {
      bench++;
    }
    return bench;
  }

  /** Lets go of a bench. */
  public synchronized void leave(int bench) {
    taken.remove(bench);
  }

  /** A number that was not given before. */
  public synchronized long newAct() {
    return ++acts;
  }

  public void watch(Runnable news) {
    watchers.add(news);
  }

  /** Tells everyone that something was written. */
  public void tell() {
    watchers.forEach(Runnable::run);
  }
}
