package wherefrom.job.tables;

import wherefrom.inspection.Decision;
import wherefrom.job.OpenJob;
import wherefrom.job.inspect.Castings;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;

/** Block and heads as a table. */
final class CastingTables {
  private CastingTables() {}

  /** A row a casting; its tests stand in the table of findings. */
  static TidyTable castings(OpenJob job) {
    Rows rows =
        new Rows(
            "castings",
            "where",
            "casting",
            "tests",
            "tests_open",
            "worst",
            "photographs",
            "decision",
            "reason");
    for (Castings.Casting one : new Castings(job).list()) {
      rows.add(
          TidyCell.of(one.subject().key()),
          TidyCell.of(one.words()),
          TidyCell.of(one.cards().size()),
          TidyCell.of(one.countOpen()),
          TidyCell.of(one.worst().word()),
          TidyCell.of(one.photographs()),
          TidyCell.of(one.decision().map(Decision::word).orElse("")),
          TidyCell.of(one.reason()));
    }
    return rows.table();
  }
}
