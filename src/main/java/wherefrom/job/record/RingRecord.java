package wherefrom.job.record;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.OpenJob;
import wherefrom.job.numbers.RingFiling;
import wherefrom.job.numbers.RingGapRow;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;

/** The card of ring filing in the build record. */
final class RingRecord {
  private RingRecord() {}

  /** One row a ring of which a gap is wanted; what is not ticked is open. */
  static RecordSection section(OpenJob job) {
    RingFiling filing = new RingFiling(job);
    List<RecordSection.Row> rows = new ArrayList<>();
    for (RingGapRow row : filing.rows()) {
      rows.add(
          new RecordSection.Row(
              List.of(
                  row.words(),
                  row.wanted().map(RingGapRow::text).orElse("unknown"),
                  row.gap().map(RingGapRow::text).orElse("not measured"),
                  row.state() == RingGapRow.State.TO_FILE
                      ? "file " + row.toFileText()
                      : row.state().words(),
                  filing.findWanted(row.ring()).map(wanted -> wanted.words()).orElse("")),
              row.state() != RingGapRow.State.DONE));
    }
    return new RecordSection(
        RecordTable.RING_FILING,
        List.of("ring", "gap wanted", "gap", "state", "wanted from"),
        rows,
        "No ring gap was typed as wanted: NOT CHECKED here.");
  }
}
