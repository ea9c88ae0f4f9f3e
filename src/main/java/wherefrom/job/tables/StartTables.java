package wherefrom.job.tables;

import wherefrom.job.OpenJob;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;
import wherefrom.job.puttogether.StartList;

/** The list before the first start as a table. */
final class StartTables {
  private StartTables() {}

  /** A row a line of the list, ticked or not. */
  static TidyTable start(OpenJob job) {
    Rows rows = new Rows("start", "point", "title", "state", "words");
    for (StartList.Line line : new StartList(job).lines()) {
      rows.add(
          TidyCell.of(line.key()),
          TidyCell.of(line.title()),
          TidyCell.of(line.ticked() ? "done" : "to do"),
          TidyCell.of(line.words()));
    }
    return rows.table();
  }
}
