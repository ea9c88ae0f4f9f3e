package wherefrom.job.tables;

import java.util.Optional;
import wherefrom.job.OpenJob;
import wherefrom.job.numbers.RingFiling;
import wherefrom.job.numbers.RingGapRow;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;
import wherefrom.quantity.Measured;
import wherefrom.quantity.Unit;

/** The card of ring filing as a table. */
final class RingTables {
  private RingTables() {}

  /** A row a ring of which a gap is wanted. */
  static TidyTable rings(OpenJob job) {
    Rows rows =
        new Rows(
            "rings",
            "where",
            "ring",
            "wanted",
            "gap",
            "unit",
            "to_file",
            "standard_uncertainty",
            "state",
            "wanted_source");
    RingFiling filing = new RingFiling(job);
    for (RingGapRow row : filing.rows()) {
      Optional<Unit> unit = row.gap().or(row::wanted).map(one -> one.value().unit());
      rows.add(
          TidyCell.of(row.where()),
          TidyCell.of(row.ring().id()),
          number(row.wanted(), unit),
          number(row.gap(), unit),
          TidyCell.of(unit.map(Unit::symbol).orElse("")),
          row.toFile().map(value -> TidyCell.of(value.value())).orElse(TidyCell.NONE),
          row.toFile().map(value -> TidyCell.of(value.standardUncertainty())).orElse(TidyCell.NONE),
          TidyCell.of(row.state().id()),
          TidyCell.of(filing.findWanted(row.ring()).map(one -> one.source()).orElse("")));
    }
    return rows.table();
  }

  private static TidyCell number(Optional<Measured> one, Optional<Unit> unit) {
    return TidyCell.of(one.map(measured -> measured.value().to(unit.orElseThrow()).number()));
  }
}
