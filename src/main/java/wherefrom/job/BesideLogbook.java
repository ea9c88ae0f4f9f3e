package wherefrom.job;

import java.util.List;
import java.util.Optional;

/** A logbook that another bench of this program has open, and will close. */
class BesideLogbook implements Logbook {
  private final Logbook shared;

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
    return shared.append(expected, entry);
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
    shared.leaveBench(bench);
  }

  @Override
  public void watch(Runnable news) {
    shared.watch(news);
  }

  @Override
  public void unwatch(Runnable news) {
    shared.unwatch(news);
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
