package wherefrom.job;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import wherefrom.job.entry.JobEntry;

/** A logbook without a file, for tests of what follows from entries. */
public final class MemoryLogbook implements Logbook {
  private final List<LoggedEntry> entries = new ArrayList<>();
  private final LocalBenches benches = new LocalBenches();

  @Override
  public synchronized List<LoggedEntry> entries() {
    return List.copyOf(entries);
  }

  @Override
  public synchronized Appended append(long expected, NewEntry entry) {
    if (expected < entries.size()) {
      return new Appended.OthersCameFirst(since(expected));
    }
    LoggedEntry logged = entry.at(entries.size() + 1L);
    entries.add(logged);
    benches.tell();
    return new Appended.Done(logged);
  }

  /** Writes an entry of bench 1, whatever was written before it. */
  public synchronized LoggedEntry append(Instant time, JobEntry entry) {
    append(entries.size(), new NewEntry(newAct(), time, By.FIRST, entry));
    return entries.get(entries.size() - 1);
  }

  @Override
  public long newAct() {
    return benches.newAct();
  }

  /** A test opens the same logbook again without closing it first. */
  @Override
  public int takeBench(int wanted) {
    return wanted;
  }

  @Override
  public void leaveBench(int bench) {}

  @Override
  public void watch(Runnable news) {
    benches.watch(news);
  }

  @Override
  public LogbookCondition condition() {
    return new LogbookCondition.Sound();
  }

  @Override
  public void close() {}
}
