package wherefrom.job.tables;

import java.util.List;
import java.util.stream.Collectors;
import wherefrom.job.OpenJob;
import wherefrom.job.before.BeforeTeardown;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;
import wherefrom.rules.before.LookAt;
import wherefrom.rules.before.Symptom;

/** What the tests before teardown point to, as a table. */
final class BeforeTables {
  private BeforeTables() {}

  /** A row a sign; where to look stands in one cell, a space between places. */
  static TidyTable signs(OpenJob job) {
    Rows rows =
        new Rows("signs", "sign", "cylinders", "found", "points_to", "look_at", "open", "source");
    for (Symptom sign : new BeforeTeardown(job).signs()) {
      rows.add(
          TidyCell.of(sign.id()),
          TidyCell.of(numbers(sign.cylinders())),
          TidyCell.of(sign.found()),
          TidyCell.of(sign.pointsTo()),
          TidyCell.of(sign.lookAt().stream().map(LookAt::key).collect(Collectors.joining(" "))),
          TidyCell.of(sign.open() ? "yes" : "no"),
          TidyCell.of(sign.source()));
    }
    return rows.table();
  }

  private static String numbers(List<Integer> cylinders) {
    return cylinders.stream().map(String::valueOf).collect(Collectors.joining(" "));
  }
}
