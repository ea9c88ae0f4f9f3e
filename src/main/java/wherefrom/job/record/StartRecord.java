package wherefrom.job.record;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.OpenJob;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;
import wherefrom.job.puttogether.StartList;

/** The list before the first start in the build record. */
final class StartRecord {
  private StartRecord() {}

  /** One row a line; none where nobody has ticked any. */
  static RecordSection section(OpenJob job) {
    List<StartList.Line> lines = new StartList(job).lines();
    List<RecordSection.Row> rows = new ArrayList<>();
    if (lines.stream().anyMatch(StartList.Line::ticked)) {
      lines.forEach(line -> rows.add(row(line)));
    }
    return new RecordSection(
        RecordTable.FIRST_START,
        List.of("before the first start", "state", "what was used or seen"),
        rows,
        "The first start: NOT CHECKED here.");
  }

  private static RecordSection.Row row(StartList.Line line) {
    String state = line.ticked() ? "done" : "to do";
    return new RecordSection.Row(List.of(line.title(), state, line.words()), !line.ticked());
  }
}
