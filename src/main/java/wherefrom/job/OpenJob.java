package wherefrom.job;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import wherefrom.job.entry.JobEntry;

/**
 * A job that is open at a bench: its logbook and the state that follows from it. What is done here
 * counts only once it is written; where another bench wrote first, that is taken in and the act
 * judged anew. Not safe for several threads: {@link #beside} gives each its own.
 */
public final class OpenJob implements AutoCloseable {
  private final Logbook logbook;
  private final Clock clock;
  private final Path folder;
  private final By by;
  private final Acts acts;
  private final Undo undo = new Undo(this);

  /**
   * @throws LogbookException when the logbook's entries make no job
   */
  public OpenJob(Logbook logbook, Clock clock) {
    this(logbook, clock, EngineJob::of);
  }

  /**
   * @param fold makes the state of entries, perhaps with what is known of the engine already
   */
  OpenJob(Logbook logbook, Clock clock, Function<List<LoggedEntry>, EngineJob> fold) {
    this(logbook, clock, Path.of(""), By.FIRST, fold);
  }

  private OpenJob(
      Logbook logbook,
      Clock clock,
      Path folder,
      By by,
      Function<List<LoggedEntry>, EngineJob> fold) {
    this.logbook = logbook;
    this.clock = clock;
    this.folder = folder;
    List<LoggedEntry> entries = logbook.entries().stream().flatMap(LoggedEntry::each).toList();
    EngineJob state = folded(entries, fold);
    this.by = by.at(logbook.takeBench(by.bench()));
    this.acts = new Acts(logbook, clock, this.by, entries, state);
  }

  private static EngineJob folded(
      List<LoggedEntry> entries, Function<List<LoggedEntry>, EngineJob> fold) {
    try {
      return fold.apply(entries);
    } catch (IllegalStateException e) {
      throw new LogbookException(
          "This is not a job that can be opened: " + e.getMessage() + ".", e);
    }
  }

  /**
   * A job that is known by a folder of this machine, where its photographs lie.
   *
   * @param by the bench that is wanted; where it is taken, the job is open at the next free one
   * @throws LogbookException when the logbook's entries make no job
   */
  public static OpenJob in(Path folder, Logbook logbook, Clock clock, By by) {
    return new OpenJob(logbook, clock, folder, by, EngineJob::of);
  }

  /**
   * Another bench of this program at the same job, for a thread of its own. Closing it lets go of
   * that bench alone.
   *
   * @param other the bench that is wanted; where it is taken, the next free one
   */
  public OpenJob beside(By other) {
    return new OpenJob(new BesideLogbook(logbook), clock, folder, other, EngineJob::of);
  }

  /** The bench, and who is at it. */
  public By by() {
    return by;
  }

  public EngineJob state() {
    return acts.state();
  }

  /** The days of what was done, in the clock's own time zone. */
  public Days days() {
    return new Days(clock.getZone());
  }

  /** The folder by which the job is known on this machine; its photographs lie there. */
  public Path folder() {
    return folder;
  }

  public LogbookCondition condition() {
    return logbook.condition();
  }

  /** Every entry ever written, those taken back included; those of an act each for itself. */
  public List<LoggedEntry> history() {
    return List.copyOf(acts.entries());
  }

  /** The sequence of the last entry: it grows with every step, whatever the clock says. */
  public long sequence() {
    return acts.sequence();
  }

  /** The sequence of the last entry of this bench; 0 where it has written none. */
  long ownSequence() {
    List<LoggedEntry> entries = acts.entries();
    for (int at = entries.size() - 1; at >= 0; at--) {
      if (isOwn(entries.get(at))) {
        return entries.get(at).sequence();
      }
    }
    return 0;
  }

  /** Whether this bench wrote it. */
  boolean isOwn(LoggedEntry logged) {
    return logged.by().bench() == by.bench();
  }

  /** Calls, on any thread, when there may be something to catch up with. */
  public void watch(Runnable news) {
    logbook.watch(news);
  }

  /**
   * Takes in what other benches have written, as far as this program has heard of it.
   *
   * @return whether there was anything
   */
  public boolean catchUp() {
    return acts.catchUp();
  }

  /**
   * What became of an act that was sent while the store was out of reach.
   *
   * @return its entry where it was written, which is taken in; empty where it was not, and is to be
   *     done again: it is then sent as the same act
   * @throws UnsentException when the store is still out of reach
   */
  public Optional<LoggedEntry> settle() {
    return acts.settle();
  }

  /**
   * What became of the act of which it was said that nobody knows, and of no other; to be asked
   * before that act is done again.
   *
   * @param said as the act was answered
   * @return its entry where it was written, told once; else empty, as {@link #settle()} has it
   * @throws UnsentException when the store is still out of reach
   */
  public Optional<LoggedEntry> settle(UnsentException said) {
    return acts.settle(said);
  }

  /** Whether an act waits to be settled. */
  public boolean isUnsettled() {
    return acts.isUnsettled();
  }

  /**
   * To be asked before anything beside the logbook is written for the job.
   *
   * @throws LogbookException when the job is open for reading only
   */
  public void requireWritable() {
    if (!condition().writable()) {
      throw new LogbookException("Nothing was written. " + condition().sentence());
    }
  }

  /**
   * Records an entry and lets the state follow; it is written at the end of {@link #asOne}. What is
   * recorded outside of it cannot be judged anew: where others came first it is refused.
   *
   * @throws LogbookException when it could not be written, or the engine is in service and its job
   *     takes no such entry; the state is then as before
   */
  public LoggedEntry record(JobEntry entry) {
    return acts.record(entry);
  }

  /**
   * Judges and does something as one act: what is recorded meanwhile is written as one entry at the
   * end, and taken back as one. Where the deed fails, nothing is written and the state is as
   * before. Where another bench has written since, that is taken in and the deed done again, so it
   * must change nothing but the job, and ask the job for every number that it gives out.
   *
   * @throws LogbookException when it could not be written; the state is then as before
   */
  public <T> T asOne(Supplier<T> deed) {
    return asOne(deed, done -> true);
  }

  /** The same for a deed that answers nothing. */
  public void inOne(Runnable deed) {
    asOne(
        () -> {
          deed.run();
          return true;
        });
  }

  /**
   * The same, where what came of it may be that it does not count: nothing is written then either.
   *
   * @param counts whether what came of the deed is to be kept
   */
  public <T> T asOne(Supplier<T> deed, Predicate<T> counts) {
    return acts.asOne(deed, counts);
  }

  /**
   * The step that UNDO takes back next at this bench, an act whole. Empty where none is left, and
   * where what was done last cannot be taken back: UNDO tells so first.
   */
  public Optional<LoggedEntry> findLastStep() {
    return undo.findStep();
  }

  /**
   * Takes this bench's last step back; where that cannot be, tells why, and asked again takes one
   * before.
   */
  public Undone undo() {
    return undo.press();
  }

  /** Takes back this bench's last step that can be, whatever stays that was done since. */
  public Undone undoBefore() {
    return undo.pressBefore();
  }

  /** The stops of parts, as this bench has them. */
  public BenchStops stops() {
    return new BenchStops(this);
  }

  /**
   * The item number for a new part, to be asked for within {@link #asOne}. Numbers are never used
   * twice, not even those of steps taken back: their tags may hang on something.
   */
  public int nextItem() {
    return new ItemNumbers(this).nextItem();
  }

  /** The issue for a part's new tag; never used twice, for the same reason. */
  public int nextIssue(int item) {
    return new ItemNumbers(this).nextIssue(item);
  }

  @Override
  public void close() {
    logbook.leaveBench(by.bench());
    logbook.close();
  }
}
