package wherefrom.job.record;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.OpenJob;
import wherefrom.job.before.BeforeTeardown;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;
import wherefrom.rules.before.Symptom;
import wherefrom.rules.before.TestsBefore;
import wherefrom.workings.ResultValue;

/** What was read before the engine came apart, in the build record. */
final class BeforeRecord {
  private BeforeRecord() {}

  /** One row a cylinder that was read, one a pressure, then what they point to. */
  static RecordSection section(OpenJob job) {
    BeforeTeardown before = new BeforeTeardown(job);
    TestsBefore tests = before.tests();
    List<RecordSection.Row> rows = new ArrayList<>();
    tests.cylinders().stream()
        .filter(one -> one.dry().isPresent() || one.leak().isPresent())
        .forEach(one -> rows.add(cylinder(one)));
    tests.running().values().stream()
        .map(TestsBefore.Running::words)
        .sorted()
        .forEach(words -> rows.add(row("engine", words, "", "", "", false)));
    before.signs().forEach(sign -> rows.add(sign(sign)));
    return new RecordSection(
        RecordTable.BEFORE_TEARDOWN,
        List.of("place", "what", "share of highest", "rise with oil", "leak-down or source"),
        rows,
        "Nothing was read before it came apart.");
  }

  private static RecordSection.Row cylinder(TestsBefore.Cylinder one) {
    return row(
        "cylinder " + one.number(),
        one.dry().map(ResultValue::text).orElse("dry not read"),
        one.share().map(ResultValue::text).orElse(""),
        one.rise().map(ResultValue::text).orElse(""),
        one.leak().map(ResultValue::text).orElse(""),
        false);
  }

  private static RecordSection.Row sign(Symptom sign) {
    return row("points to", sign.sentence(), "", "", sign.source(), sign.open());
  }

  private static RecordSection.Row row(
      String place, String what, String share, String rise, String last, boolean open) {
    return new RecordSection.Row(List.of(place, what, share, rise, last), open);
  }
}
