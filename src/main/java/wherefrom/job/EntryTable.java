package wherefrom.job;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import wherefrom.job.entry.JobEntry;

/**
 * An answer for each kind of entry; {@link EntryRows} make it.
 *
 * @param <C> what a row is told besides the entry
 * @param <R> what it answers
 */
public final class EntryTable<C, R> implements EntryReader {
  private final Map<Class<? extends JobEntry>, BiFunction<C, JobEntry, R>> rows;
  private final Optional<R> others;

  EntryTable(Map<Class<? extends JobEntry>, BiFunction<C, JobEntry, R>> rows, Optional<R> others) {
    this.rows = rows;
    this.others = others;
  }

  /** The answer for an entry. */
  public R of(C told, JobEntry entry) {
    BiFunction<C, JobEntry, R> row = rows.get(entry.getClass());
    return row == null ? others.orElseThrow() : row.apply(told, entry);
  }

  @Override
  public Set<Class<? extends JobEntry>> kinds() {
    return rows.keySet();
  }
}
