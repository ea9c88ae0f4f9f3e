package wherefrom.ui.sample;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import wherefrom.job.Appended;
import wherefrom.job.By;
import wherefrom.job.LocalBenches;
import wherefrom.job.Logbook;
import wherefrom.job.LogbookCondition;
import wherefrom.job.LogbookException;
import wherefrom.job.LoggedEntry;
import wherefrom.job.NewEntry;
import wherefrom.job.entry.JobEntry;

/** A logbook in memory, which can be made to fail as a full disk does. */
public final class PaperLogbook implements Logbook {
  private final List<LoggedEntry> entries = new ArrayList<>();
  private final LocalBenches benches = new LocalBenches();
  private String failure = "";

  /** From now on nothing can be written, with this sentence; with an empty one it can again. */
  public void fail(String sentence) {
    failure = sentence;
  }

  @Override
  public synchronized List<LoggedEntry> entries() {
    return List.copyOf(entries);
  }

  @Override
  public synchronized Appended append(long expected, NewEntry entry) {
    if (!failure.isEmpty()) {
      throw new LogbookException(failure);
    }
    if (expected < entries.size()) {
      return new Appended.OthersCameFirst(since(expected));
    }
    LoggedEntry logged = entry.at(entries.size() + 1L);
    entries.add(logged);
    benches.tell();
    return new Appended.Done(logged);
  }

  /** Writes an entry of bench 1, whatever was written before it. */
  public LoggedEntry append(Instant time, JobEntry entry) {
    NewEntry written = new NewEntry(newAct(), time, By.FIRST, entry);
    append(entries().size(), written);
    return written.at(entries().size());
  }

  @Override
  public long newAct() {
    return benches.newAct();
  }

  /** A test opens the same logbook at bench 1 again without closing it first. */
  @Override
  public int takeBench(int wanted) {
    return wanted == 1 ? 1 : benches.take(wanted);
  }

  @Override
  public void leaveBench(int bench) {
    benches.leave(bench);
  }

  @Override
  public void watch(Runnable news) {
    benches.watch(news);
  }

  @Override
  public void unwatch(Runnable news) {
    benches.unwatch(news);
  }

  @Override
  public LogbookCondition condition() {
    return new LogbookCondition.Sound();
  }

  @Override
  public void close() {}
}
