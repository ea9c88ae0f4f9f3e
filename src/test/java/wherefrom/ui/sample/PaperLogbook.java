package wherefrom.ui.sample;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.job.Appended;
import wherefrom.job.By;
import wherefrom.job.LocalBenches;
import wherefrom.job.Logbook;
import wherefrom.job.LogbookCondition;
import wherefrom.job.LogbookException;
import wherefrom.job.LoggedEntry;
import wherefrom.job.NewEntry;
import wherefrom.job.UnsentException;
import wherefrom.job.entry.JobEntry;

/** A logbook in memory, which can be made to fail as a full disk or a server that is away does. */
public final class PaperLogbook implements Logbook {
  private final List<LoggedEntry> entries = new ArrayList<>();
  private final LocalBenches benches = new LocalBenches();
  private final Map<Long, LoggedEntry> acts = new HashMap<>();
  private String failure = "";
  private Away away = Away.NO;
  private LogbookCondition condition = new LogbookCondition.Sound();

  /** Whether the store is out of reach. */
  public enum Away {
    NO,
    /** What is sent does not arrive. */
    UNSENT,
    /** What is sent is written, and the answer is lost. */
    UNHEARD
  }

  /** From now on nothing can be written, with this sentence; with an empty one it can again. */
  public void fail(String sentence) {
    failure = sentence;
  }

  /** From now on it is for reading only, with this sentence; whoever watches is told. */
  public void damage(String sentence) {
    condition = new LogbookCondition.ReadOnly(sentence);
    benches.tell();
  }

  /** From now on it is out of reach; or it is back, and whoever watches is told. */
  public void away(Away now) {
    away = now;
    if (now == Away.NO) {
      benches.tell();
    }
  }

  private void requireNear() {
    if (away != Away.NO) {
      throw new UnsentException(
          "No connection to the shared server bench-pc. Nothing is shown as done.", null);
    }
  }

  @Override
  public synchronized Optional<LoggedEntry> find(long act) {
    requireNear();
    return Optional.ofNullable(acts.get(act));
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
    if (away == Away.UNSENT) {
      requireNear();
    }
    if (expected < entries.size()) {
      return new Appended.OthersCameFirst(since(expected));
    }
    LoggedEntry logged = entry.at(entries.size() + 1L);
    entries.add(logged);
    acts.put(entry.act(), logged);
    requireNear();
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
  public LogbookCondition condition() {
    return condition;
  }

  @Override
  public void close() {}
}
