package wherefrom.job.tables;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;

/** A table that is being filled. */
final class Rows {
  private final String name;
  private final List<String> columns;
  private final List<List<TidyCell>> rows = new ArrayList<>();

  Rows(String name, String... columns) {
    this.name = name;
    this.columns = List.of(columns);
  }

  void add(TidyCell... cells) {
    rows.add(List.of(cells));
  }

  TidyTable table() {
    return new TidyTable(name, columns, rows);
  }
}
