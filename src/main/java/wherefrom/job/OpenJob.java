package wherefrom.job;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;
import wherefrom.job.entry.Act;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.KindsTracked;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.TagReissued;
import wherefrom.job.entry.TakenBack;

/**
 * A job that is open on the bench: its logbook and the state that follows from it. The state
 * changes only after an entry is on disk. Not safe for several threads.
 */
public final class OpenJob implements AutoCloseable {
  /** The highest item number that an entry gives out. */
  private static final EntryTable<OpenJob, Integer> LAST_ITEM =
      EntryRows.<OpenJob, Integer>none()
          .on(PartReplaced.class, (job, replaced) -> replaced.newItem())
          .on(KindsTracked.class, (job, it) -> it.first() + it.items().size() - 1)
          .on(JobOpened.class, (job, opened) -> opened.numberedItems().size())
          .others(0);

  private final Logbook logbook;
  private final Clock clock;
  private final List<LoggedEntry> entries;
  private final Undo undo = new Undo(this);
  private EngineJob state;
  private boolean inAct;
  private Instant actTime = Instant.EPOCH;
  private int actFrom;

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
    this.logbook = logbook;
    this.clock = clock;
    this.entries = new ArrayList<>(logbook.entries().stream().flatMap(LoggedEntry::each).toList());
    try {
      this.state = fold.apply(entries);
    } catch (IllegalStateException e) {
      throw new LogbookException(
          "This is not a job that can be opened: " + e.getMessage() + ".", e);
    }
  }

  public EngineJob state() {
    return state;
  }

  /** The days of what was done, in the clock's own time zone. */
  public Days days() {
    return new Days(clock.getZone());
  }

  /** The folder that holds the logbook and the photographs. */
  public Path folder() {
    return logbook.folder();
  }

  public LogbookCondition condition() {
    return logbook.condition();
  }

  /** Every entry ever written, those taken back included; those of an act each for itself. */
  public List<LoggedEntry> history() {
    return List.copyOf(entries);
  }

  /** The sequence of the last entry: it grows with every step, whatever the clock says. */
  public long sequence() {
    return entries.get(entries.size() - 1).sequence();
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
   * Writes an entry, then lets the state follow. Within {@link #asOne} it is written at the end.
   *
   * @throws LogbookException when it could not be written, or the engine is in service and its job
   *     takes no such entry; the state is then as before
   */
  public LoggedEntry record(JobEntry entry) {
    if (!state.service().takes(entry, entries)) {
      throw new LogbookException(InService.CLOSED);
    }
    Instant now = inAct ? actTime : clock.instant();
    LoggedEntry logged = new LoggedEntry(nextSequence(), now, entry);
    Optional<EngineJob> after = entry instanceof TakenBack ? folded(logged) : Optional.empty();
    if (!inAct) {
      logged = logbook.append(logged.time(), entry);
    }
    logged.each().forEach(entries::add);
    if (after.isPresent()) {
      state = after.get();
    } else {
      logged.each().forEach(each -> state = state.after(each));
    }
    return logged;
  }

  private long nextSequence() {
    return entries.get(entries.size() - 1).sequence() + (inAct && entries.size() > actFrom ? 0 : 1);
  }

  /** The state with one more entry; tried before it is written, for it may make no job. */
  private Optional<EngineJob> folded(LoggedEntry next) {
    List<LoggedEntry> all = new ArrayList<>(entries);
    all.add(next);
    try {
      return Optional.of(state.anew(all));
    } catch (IllegalStateException e) {
      throw new LogbookException(
          "This cannot be undone, as later steps build on it: " + e.getMessage() + ".", e);
    }
  }

  /**
   * Does several things as one act: what is recorded meanwhile is written as one entry at the end,
   * and taken back as one. Where the deed fails, nothing is written and the state is as before.
   *
   * @throws LogbookException when it could not be written; the state is then as before
   */
  public <T> T asOne(Supplier<T> deed) {
    return asOne(deed, done -> true);
  }

  /**
   * The same, where what came of it may be that it does not count: nothing is written then either.
   *
   * @param counts whether what came of the deed is to be kept
   */
  public <T> T asOne(Supplier<T> deed, Predicate<T> counts) {
    if (inAct) {
      return deed.get();
    }
    actFrom = entries.size();
    actTime = clock.instant();
    inAct = true;
    boolean kept = false;
    try {
      T done = deed.get();
      kept = counts.test(done);
      if (kept) {
        keepAct();
      }
      return done;
    } finally {
      if (inAct || !kept) {
        dropAct();
        state = state.anew(entries);
      }
    }
  }

  /** Writes what was recorded in the act as one entry; the state has followed it already. */
  private void keepAct() {
    List<JobEntry> act =
        entries.subList(actFrom, entries.size()).stream().map(LoggedEntry::entry).toList();
    if (!act.isEmpty()) {
      logbook.append(actTime, Act.of(act));
    }
    inAct = false;
  }

  /** Ends the act as if it had not been. */
  private void dropAct() {
    inAct = false;
    entries.subList(actFrom, entries.size()).clear();
  }

  /**
   * The step that UNDO takes back next, an act whole. Empty where none is left, and where what was
   * done last cannot be taken back: UNDO tells so first.
   */
  public Optional<LoggedEntry> findLastStep() {
    return undo.findStep();
  }

  /**
   * Takes the last step back; where that cannot be, tells why, and asked again takes one before.
   */
  public Undone undo() {
    return undo.press();
  }

  /** Takes back the last step that can be, whatever stays that was done since. */
  public Undone undoBefore() {
    return undo.pressBefore();
  }

  /**
   * The stop that stands, whatever was logged since but a fit: whoever fitted another part since
   * has gone on, and that fit is the later step. Empty when none does.
   */
  public Optional<LoggedEntry> findStandingStop() {
    return state
        .stops()
        .last()
        .filter(stop -> state.standing().stream().noneMatch(it -> isFitSince(it, stop)));
  }

  private static boolean isFitSince(LoggedEntry logged, LoggedEntry stop) {
    return logged.sequence() > stop.sequence() && logged.entry() instanceof PartFitted;
  }

  /** Takes back the stop that stands, whatever was logged since; empty when none stands. */
  public Optional<LoggedEntry> takeBackStop() {
    Optional<LoggedEntry> standing = findStandingStop();
    standing.ifPresent(step -> record(new TakenBack(step.sequence())));
    return standing;
  }

  /**
   * The item number for a new part. Numbers are never used twice, not even those of steps taken
   * back: their tags may hang on something.
   */
  public int nextItem() {
    int standing = state.parts().stream().mapToInt(part -> part.part().item()).max().orElse(0);
    return 1 + Math.max(standing, highest(entry -> LAST_ITEM.of(this, entry)));
  }

  /** The issue for a part's new tag; never used twice, for the same reason. */
  public int nextIssue(int item) {
    int tagged =
        highest(
            entry ->
                entry instanceof TagReissued reissued && reissued.item() == item
                    ? reissued.issue()
                    : 0);
    return 1 + Math.max(tagged, state.getPart(item).part().issue());
  }

  private int highest(ToIntFunction<JobEntry> number) {
    return entries.stream().map(LoggedEntry::entry).mapToInt(number).max().orElse(0);
  }

  @Override
  public void close() {
    logbook.close();
  }
}
