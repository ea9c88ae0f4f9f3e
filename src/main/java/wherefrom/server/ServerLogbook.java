package wherefrom.server;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wherefrom.job.Appended;
import wherefrom.job.LocalBenches;
import wherefrom.job.Logbook;
import wherefrom.job.LogbookCondition;
import wherefrom.job.LogbookException;
import wherefrom.job.LoggedEntry;
import wherefrom.job.NewEntry;
import wherefrom.job.UnsentException;
import wherefrom.logbook.LogLines;
import wherefrom.server.LineRows.Row;
import wherefrom.server.LineRows.Sender;

/**
 * A logbook on a shared server. What this program knows of it grows by its own entries and by what
 * it hears of the others'; each line is checked against the one before it, as in a file.
 */
final class ServerLogbook implements Logbook {
  private final Database database;
  private final int job;
  private final UUID sitting;
  private final LocalBenches benches = new LocalBenches();
  private final List<LoggedEntry> entries = new ArrayList<>();
  private final Map<Sender, LoggedEntry> own = new HashMap<>();
  private final Listener listener;
  private String tip;
  private LogbookCondition condition;

  /** What whoever watches has been told of the condition. */
  private LogbookCondition told;

  private ServerLogbook(
      Database database, int job, UUID sitting, LogLines.Read read, String unkept) {
    this.database = database;
    this.job = job;
    this.sitting = sitting;
    this.entries.addAll(read.entries());
    this.tip = read.tip();
    this.condition = condition(read.trouble(), unkept);
    this.told = condition;
    this.listener = new Listener(database, job, sitting, this::hear);
  }

  private static LogbookCondition condition(String trouble, String unkept) {
    if (!trouble.isEmpty()) {
      return new LogbookCondition.ReadOnly(trouble);
    }
    return unkept.isEmpty() ? new LogbookCondition.Sound() : new LogbookCondition.Unkept(unkept);
  }

  /**
   * Opens a job's logbook, for reading only where it is damaged.
   *
   * @throws LogbookException where the server does not answer
   */
  static ServerLogbook open(Database database, int job) {
    return database.ask(
        connection -> {
          List<LogLines.Line> lines =
              LineRows.newer(connection, job, 0).stream().map(Row::line).toList();
          return new ServerLogbook(
              database,
              job,
              LineRows.sitting(connection),
              LogLines.read(lines),
              ServerPromise.findBroken(connection));
        });
  }

  @Override
  public synchronized List<LoggedEntry> entries() {
    return List.copyOf(entries);
  }

  @Override
  public synchronized List<LoggedEntry> since(long sequence) {
    return List.copyOf(entries.subList((int) sequence, entries.size()));
  }

  @Override
  public Appended append(long expected, NewEntry entry) {
    Appended came = appended(expected, entry);
    if (came instanceof Appended.Done) {
      benches.tell();
    }
    return came;
  }

  private synchronized Appended appended(long expected, NewEntry entry) {
    requireWritable();
    if (expected < entries.size()) {
      return new Appended.OthersCameFirst(since(expected));
    }
    LoggedEntry logged = entry.at(expected + 1);
    byte[] headers = entries.isEmpty() ? LogLines.header() : new byte[0];
    byte[] line = LogLines.line(logged, entries.isEmpty() ? LogLines.sum(headers) : tip);
    Sender sender = new Sender(sitting, entry.act());
    Row row = new Row(logged.sequence(), sender, new LogLines.Line(headers, line));
    if (send(row, logged)) {
      take(sender, logged, line);
      return new Appended.Done(logged);
    }
    return unlessWritten(expected, sender, logged);
  }

  /**
   * Sends a row until the server has said what became of it. One that is not taken although nobody
   * wrote is of a bench that this program holds no more: it is sent once more where it does.
   *
   * @return whether it is written by this sending; where it is not, what others wrote is taken in
   */
  private boolean send(Row row, LoggedEntry logged) {
    boolean written = sendOnce(row, logged);
    if (!written && entries.size() < row.sequence()) {
      listener.holdBenches();
      lookForLostBench();
      requireGoingOn();
      written = sendOnce(row, logged);
    }
    return written;
  }

  private boolean sendOnce(Row row, LoggedEntry logged) {
    int bench = logged.by().bench();
    boolean written =
        database.sendUntilHeard(connection -> LineRows.add(connection, job, bench, row));
    if (!written) {
      fetchOrWait();
      requireGoingOn();
    }
    return written;
  }

  /** An earlier sending may be written: where that cannot be seen now, it is not settled. */
  private void fetchOrWait() {
    try {
      fetch();
    } catch (UnsentException e) {
      throw e;
    } catch (LogbookException e) {
      throw new UnsentException(String.valueOf(e.getMessage()), e);
    }
  }

  private void requireGoingOn() {
    if (!condition.writable()) {
      throw new LogbookException(condition.sentence());
    }
  }

  private void requireWritable() {
    if (!condition.writable()) {
      throw new LogbookException("Nothing was written. " + condition.sentence());
    }
  }

  /** Two programs at one bench would take back each other's steps. */
  private void lookForLostBench() {
    listener
        .findLostBench()
        .ifPresent(
            bench ->
                condition =
                    new LogbookCondition.ReadOnly(
                        "Another program took bench "
                            + bench
                            + " while the way to the shared server was cut. Close the job and open"
                            + " it again: it is then at the next free bench."));
  }

  /** What others wrote; but an earlier sending may have been written, its answer lost. */
  private Appended unlessWritten(long expected, Sender sender, LoggedEntry logged) {
    LoggedEntry written = own.get(sender);
    List<LoggedEntry> came = since(expected);
    if (logged.equals(written)) {
      return new Appended.Done(logged);
    }
    if (written != null) {
      throw new LogbookException("It was kept before the connection broke. It counts once.");
    }
    if (came.isEmpty()) {
      throw new LogbookException("The shared server did not take the step. Do it again.");
    }
    return new Appended.OthersCameFirst(came);
  }

  private void take(Sender sender, LoggedEntry logged, byte[] line) {
    entries.add(logged);
    if (sender.sitting().equals(sitting)) {
      own.put(sender, logged);
    }
    tip = LogLines.sum(line);
  }

  /** Takes in what others wrote, each line checked against the one before it. */
  private void fetch() {
    List<Row> rows = database.ask(connection -> LineRows.newer(connection, job, entries.size()));
    for (Row row : rows) {
      try {
        byte[] line = row.line().line();
        take(row.sender(), LogLines.next(line, entries.size() + 1L, tip), line);
      } catch (IOException e) {
        String why = "The logbook on the server is damaged, or newer than this program: ";
        condition =
            new LogbookCondition.ReadOnly(
                why + "entry " + row.sequence() + ", " + e.getMessage() + ".");
        return;
      }
    }
  }

  /**
   * Something may have been written, or can be written no more.
   *
   * @param back whether the server was away and is there again
   */
  private void hear(boolean back) {
    if (hasChanged() || back) {
      benches.tell();
    }
  }

  private synchronized boolean hasChanged() {
    int before = entries.size();
    try {
      fetch();
      lookForLostBench();
    } catch (LogbookException e) {
      // The listener hears of it, too, and comes again.
      return false;
    }
    boolean changed = entries.size() > before || !condition.equals(told);
    told = condition;
    return changed;
  }

  @Override
  public synchronized Optional<LoggedEntry> find(long act) {
    fetch();
    return Optional.ofNullable(own.get(new Sender(sitting, act)));
  }

  @Override
  public long newAct() {
    return benches.newAct();
  }

  @Override
  public int takeBench(int wanted) {
    return listener.takeBench(wanted);
  }

  @Override
  public void leaveBench(int bench) {
    listener.leaveBench(bench);
  }

  @Override
  public void watch(Runnable news) {
    benches.watch(news);
    listener.start();
  }

  @Override
  public synchronized LogbookCondition condition() {
    return condition;
  }

  @Override
  public void close() {
    listener.close();
  }
}
