package wherefrom.job.record;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.OpenJob;
import wherefrom.job.measure.WeightSet;
import wherefrom.job.numbers.BobWeight;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;

/** Matched sets and the bob weight in the build record. */
final class WeightRecord {
  private WeightRecord() {}

  /** One row a part that was weighed, then the bob weight where it is known. */
  static RecordSection section(OpenJob job) {
    List<RecordSection.Row> rows = new ArrayList<>();
    for (WeightSet set : WeightSet.list(job.state())) {
      for (WeightSet.Member one : set.members()) {
        rows.add(
            new RecordSection.Row(
                List.of(one.where(), set.plan().title(), one.weight().text(), one.words()),
                one.isHeavier()));
      }
    }
    new BobWeight(job)
        .slip()
        .ifPresent(
            slip ->
                rows.add(new RecordSection.Row(List.of("crank", "Bob weight", slip, ""), false)));
    return new RecordSection(
        RecordTable.WEIGHTS,
        List.of("place", "what", "weight", "state"),
        rows,
        "Nothing was weighed.");
  }
}
