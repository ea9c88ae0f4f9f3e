package wherefrom.job;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.entry.TakenBack;

/**
 * A job that is open on the bench: its logbook and the state that follows from it. The state
 * changes only after an entry is on disk. Not safe for several threads.
 */
public final class OpenJob implements AutoCloseable {
  private final Logbook logbook;
  private final Clock clock;
  private final List<LoggedEntry> entries;
  private EngineJob state;

  /**
   * @throws LogbookException when the logbook's entries make no job
   */
  public OpenJob(Logbook logbook, Clock clock) {
    this.logbook = logbook;
    this.clock = clock;
    this.entries = new ArrayList<>(logbook.entries());
    try {
      this.state = EngineJob.of(entries);
    } catch (IllegalStateException e) {
      throw new LogbookException("This is no job that can be opened: " + e.getMessage() + ".", e);
    }
  }

  public EngineJob state() {
    return state;
  }

  /** The folder that holds the logbook and the photographs. */
  public Path folder() {
    return logbook.folder();
  }

  public LogbookCondition condition() {
    return logbook.condition();
  }

  /** Every entry ever written, those taken back included. */
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
   * Writes an entry, then lets the state follow.
   *
   * @throws LogbookException when it could not be written; the state is then as before
   */
  public LoggedEntry record(JobEntry entry) {
    LoggedEntry logged = logbook.append(clock.instant(), entry);
    entries.add(logged);
    if (entry instanceof TakenBack) {
      state = EngineJob.of(entries);
    } else {
      state.apply(logged);
    }
    return logged;
  }

  /** The last step that can be taken back; a stop counts only while it stands. */
  public Optional<LoggedEntry> findLastStep() {
    List<LoggedEntry> standing = state.standing();
    for (int at = standing.size() - 1; at >= 0; at--) {
      JobEntry entry = standing.get(at).entry();
      boolean spentStop =
          entry instanceof StopGiven && !state.standingStop().equals(Optional.of(entry));
      if (entry.canBeTakenBack() && !spentStop) {
        return Optional.of(standing.get(at));
      }
    }
    return Optional.empty();
  }

  /** Takes the last step back and says which it was; empty when there is none left. */
  public Optional<LoggedEntry> takeBack() {
    Optional<LoggedEntry> last = findLastStep();
    last.ifPresent(step -> record(new TakenBack(step.sequence())));
    return last;
  }

  /** Takes back the stop that stands, whatever was logged since; empty when none stands. */
  public Optional<LoggedEntry> takeBackStop() {
    Optional<LoggedEntry> standing =
        state.standingStop().stream()
            .flatMap(stop -> state.standing().stream().filter(it -> it.entry() == stop))
            .findFirst();
    standing.ifPresent(step -> record(new TakenBack(step.sequence())));
    return standing;
  }

  /**
   * The item number for a new part. Numbers are never used twice, not even those of steps taken
   * back: their tags may hang on something.
   */
  public int nextItem() {
    int highest = state.parts().stream().mapToInt(part -> part.part().item()).max().orElse(0);
    for (LoggedEntry logged : entries) {
      if (logged.entry() instanceof PartReplaced replaced) {
        highest = Math.max(highest, replaced.newItem());
      }
    }
    return highest + 1;
  }

  @Override
  public void close() {
    logbook.close();
  }
}
