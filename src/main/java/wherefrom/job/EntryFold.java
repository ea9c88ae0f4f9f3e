package wherefrom.job;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import wherefrom.job.entry.JobEntry;

/**
 * What a state takes in of the entries: one row for each kind that it reads. All other kinds leave
 * it as it is.
 *
 * @param <C> the state
 */
public final class EntryFold<C> implements EntryReader {

  /** Takes in an entry of one kind, with the place and time it has in the logbook. */
  @FunctionalInterface
  public interface Row<C, E extends JobEntry> {
    void take(C state, E entry, LoggedEntry logged);
  }

  private final Map<Class<? extends JobEntry>, Row<C, JobEntry>> rows;

  private EntryFold(Map<Class<? extends JobEntry>, Row<C, JobEntry>> rows) {
    this.rows = Map.copyOf(rows);
  }

  /** A fold that reads nothing. */
  public static <C> EntryFold<C> none() {
    return new EntryFold<>(Map.of());
  }

  /** The fold with one row more. */
  public <E extends JobEntry> EntryFold<C> on(Class<E> kind, BiConsumer<C, E> row) {
    return at(kind, (state, entry, logged) -> row.accept(state, entry));
  }

  /**
   * The fold with one row more, which asks where in the logbook the entry stands.
   *
   * @throws IllegalArgumentException when the kind has a row
   */
  public <E extends JobEntry> EntryFold<C> at(Class<E> kind, Row<C, E> row) {
    Map<Class<? extends JobEntry>, Row<C, JobEntry>> all = new HashMap<>(rows);
    if (all.put(kind, (state, entry, logged) -> row.take(state, kind.cast(entry), logged))
        != null) {
      throw new IllegalArgumentException("two rows for " + kind.getSimpleName());
    }
    return new EntryFold<>(all);
  }

  /** Lets the state take in an entry. */
  public void take(C state, LoggedEntry logged) {
    Row<C, JobEntry> row = rows.get(logged.entry().getClass());
    if (row != null) {
      row.take(state, logged.entry(), logged);
    }
  }

  /** Lets the state take in entries, oldest first; the state. */
  public C all(C state, Iterable<LoggedEntry> entries) {
    entries.forEach(logged -> take(state, logged));
    return state;
  }

  @Override
  public Set<Class<? extends JobEntry>> kinds() {
    return rows.keySet();
  }
}
