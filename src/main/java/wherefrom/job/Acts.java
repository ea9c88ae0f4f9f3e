package wherefrom.job;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import wherefrom.job.entry.JobEntry;

/**
 * The acts of a bench: each is judged on the history that the bench knows, and written behind it;
 * where others wrote first, what they did is taken in and the act done again.
 */
final class Acts {
  private final Logbook logbook;
  private final Clock clock;
  private final By by;
  private final List<LoggedEntry> entries;
  private final Sending sending;
  private EngineJob state;
  private Optional<ActInMaking> making = Optional.empty();

  /**
   * @param entries the history so far, those of an act each for itself
   * @param state what follows from them
   */
  Acts(Logbook logbook, Clock clock, By by, List<LoggedEntry> entries, EngineJob state) {
    this.logbook = logbook;
    this.clock = clock;
    this.by = by;
    this.entries = new ArrayList<>(entries);
    this.sending = new Sending(logbook);
    this.state = state;
  }

  EngineJob state() {
    return state;
  }

  /** The history as it is by now, those of an act each for itself. */
  List<LoggedEntry> entries() {
    return Collections.unmodifiableList(entries);
  }

  long sequence() {
    return entries.get(entries.size() - 1).sequence();
  }

  /** Takes in what others wrote; nothing while an act is being done. */
  boolean catchUp() {
    return making.isEmpty() && takeIn(logbook.since(sequence()));
  }

  private boolean takeIn(List<LoggedEntry> came) {
    List<LoggedEntry> each = came.stream().flatMap(LoggedEntry::each).toList();
    entries.addAll(each);
    if (each.stream().anyMatch(logged -> logged.entry().findTakenBack().isPresent())) {
      state = state.anew(entries);
    } else {
      each.forEach(one -> state = state.after(one));
    }
    return !each.isEmpty();
  }

  boolean isUnsettled() {
    return sending.isUnsettled();
  }

  Optional<LoggedEntry> settle() {
    Optional<LoggedEntry> written = sending.settle();
    catchUp();
    return written;
  }

  Optional<LoggedEntry> settle(UnsentException said) {
    Optional<LoggedEntry> written = sending.settle(said);
    catchUp();
    return written;
  }

  /** What was written unheard is taken in, so that whoever is told of it sees it. */
  private long newAct() {
    try {
      return sending.newAct();
    } catch (LogbookException e) {
      catchUp();
      throw e;
    }
  }

  /** Records an entry within an act; one by itself is an act that can be tried once only. */
  LoggedEntry record(JobEntry entry) {
    if (making.isEmpty()) {
      return attempt(newAct(), () -> record(entry), done -> true)
          .orElseThrow(() -> new LogbookException("Another bench was first. Do it again."));
    }
    if (!state.service().takes(entry, entries)) {
      throw new LogbookException(InService.CLOSED);
    }
    LoggedEntry logged = new LoggedEntry(making.get().sequence(), making.get().time(), by, entry);
    Optional<EngineJob> after = entry.findTakenBack().flatMap(back -> folded(logged));
    logged.each().forEach(entries::add);
    if (after.isPresent()) {
      state = after.get();
    } else {
      logged.each().forEach(one -> state = state.after(one));
    }
    return logged;
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

  /** Does an act until it is written, or does not count. */
  <T> T asOne(Supplier<T> deed, Predicate<T> counts) {
    if (making.isPresent()) {
      return part(deed, counts);
    }
    long act = newAct();
    catchUp();
    Optional<T> done = attempt(act, deed, counts);
    while (done.isEmpty()) {
      done = attempt(act, deed, counts);
    }
    return done.get();
  }

  /** A part of a larger act; where it does not count, the rest of that goes on without it. */
  private <T> T part(Supplier<T> deed, Predicate<T> counts) {
    int from = entries.size();
    T done = deed.get();
    if (!counts.test(done)) {
      forget(from);
    }
    return done;
  }

  private void forget(int from) {
    if (entries.size() > from) {
      entries.subList(from, entries.size()).clear();
      state = state.anew(entries);
    }
  }

  /** Tries it once; empty where others came first, who are then taken in. */
  private <T> Optional<T> attempt(long act, Supplier<T> deed, Predicate<T> counts) {
    int from = entries.size();
    EngineJob before = state.copy();
    ActInMaking begun = new ActInMaking(act, clock.instant(), by, sequence());
    making = Optional.of(begun);
    List<LoggedEntry> came = List.of();
    boolean kept = false;
    T done;
    try {
      done = deed.get();
      if (counts.test(done)) {
        came = sending.send(begun, entries.subList(from, entries.size()));
        kept = came.isEmpty();
      }
    } finally {
      making = Optional.empty();
      if (!kept && entries.size() > from) {
        entries.subList(from, entries.size()).clear();
        state = before;
      }
    }
    return takeIn(came) ? Optional.empty() : Optional.of(done);
  }
}
