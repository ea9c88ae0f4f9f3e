package wherefrom.job;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import wherefrom.job.entry.JobEntry;

/**
 * The rows of an {@link EntryTable} that is being written.
 *
 * @param <C> what a row is told besides the entry
 * @param <R> what it answers
 */
public final class EntryRows<C, R> {
  private final Map<Class<? extends JobEntry>, BiFunction<C, JobEntry, R>> rows;

  private EntryRows(Map<Class<? extends JobEntry>, BiFunction<C, JobEntry, R>> rows) {
    this.rows = Map.copyOf(rows);
  }

  /** No rows yet. */
  public static <C, R> EntryRows<C, R> none() {
    return new EntryRows<>(Map.of());
  }

  /**
   * One row more.
   *
   * @throws IllegalArgumentException when the kind has a row
   */
  public <E extends JobEntry> EntryRows<C, R> on(Class<E> kind, BiFunction<C, E, R> row) {
    return and(new EntryRows<>(Map.of(kind, (told, entry) -> row.apply(told, kind.cast(entry)))));
  }

  /**
   * These rows and others.
   *
   * @throws IllegalArgumentException when both have a row for a kind
   */
  public EntryRows<C, R> and(EntryRows<C, R> more) {
    Map<Class<? extends JobEntry>, BiFunction<C, JobEntry, R>> all = new HashMap<>(rows);
    more.rows.forEach(
        (kind, row) -> {
          if (all.put(kind, row) != null) {
            throw new IllegalArgumentException("two rows for " + kind.getSimpleName());
          }
        });
    return new EntryRows<>(all);
  }

  /**
   * The table of these rows, which are for every kind there is.
   *
   * @throws IllegalStateException when a kind has none
   */
  public EntryTable<C, R> whole() {
    List<String> without =
        Arrays.stream(JobEntry.class.getPermittedSubclasses())
            .filter(kind -> !rows.containsKey(kind))
            .map(Class::getSimpleName)
            .toList();
    if (!without.isEmpty()) {
      throw new IllegalStateException("no row for " + String.join(", ", without));
    }
    return new EntryTable<>(rows, Optional.empty());
  }

  /** The table of these rows, with this answer for every kind that has none. */
  public EntryTable<C, R> others(R answer) {
    return new EntryTable<>(rows, Optional.of(answer));
  }
}
