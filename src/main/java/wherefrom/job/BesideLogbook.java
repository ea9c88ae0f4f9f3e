package wherefrom.job;

import java.util.List;
import java.util.Optional;

/**
 * A logbook that another bench of this program has open, and will close. Once its bench is left,
 * nothing more is written here: whoever has it next is not written for.
 */
class BesideLogbook implements Logbook {
  private static final String LEFT = "This bench has left the job. Nothing was written.";

  private final Logbook shared;

  /** Held while it is written, so that leaving waits for what has begun. */
  private final Object writing = new Object();

  private boolean left;

  BesideLogbook(Logbook shared) {
    this.shared = shared;
  }

  @Override
  public List<LoggedEntry> entries() {
    return shared.entries();
  }

  @Override
  public List<LoggedEntry> since(long sequence) {
    return shared.since(sequence);
  }

  @Override
  public Appended append(long expected, NewEntry entry) {
    synchronized (writing) {
      if (left) {
        throw new LogbookException(LEFT);
      }
      return shared.append(expected, entry);
    }
  }

  @Override
  public Optional<LoggedEntry> find(long act) {
    return shared.find(act);
  }

  @Override
  public long newAct() {
    return shared.newAct();
  }

  @Override
  public int takeBench(int wanted) {
    return shared.takeBench(wanted);
  }

  @Override
  public void leaveBench(int bench) {
    synchronized (writing) {
      left = true;
    }
    shared.leaveBench(bench);
  }

  @Override
  public void watch(Runnable news) {
    shared.watch(news);
  }

  @Override
  public LogbookCondition condition() {
    return shared.condition();
  }

  @Override
  public void close() {
    // The bench that opened it closes it.
  }
}
