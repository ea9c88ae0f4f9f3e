package wherefrom.job.pages;

import java.util.List;

/**
 * A table for spreadsheets and other programs: a row is one fact, a column one thing that is said
 * of it, and units stand in columns of their own.
 *
 * @param name of the file, without its ending; never changes
 * @param columns their names; they never change, new ones come behind them
 */
public record TidyTable(String name, List<String> columns, List<List<TidyCell>> rows) {
  public TidyTable {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<TidyCell> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(name + ": " + row.size() + " cells in a row");
      }
    }
  }
}
