package wherefrom.job.record;

import java.util.ArrayList;
import java.util.List;
import wherefrom.inspection.Look;
import wherefrom.job.OpenJob;
import wherefrom.job.inspect.Castings;
import wherefrom.job.inspect.CheckCard;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;

/** Block and heads in the build record. */
final class CastingRecord {
  private CastingRecord() {}

  /** One row a test that was answered, then what was decided; castings nobody touched are left. */
  static RecordSection section(OpenJob job) {
    List<RecordSection.Row> rows = new ArrayList<>();
    for (Castings.Casting one : new Castings(job).list()) {
      boolean begun = one.worst() != Look.NOT_LOOKED || one.decision().isPresent();
      if (begun) {
        one.cards().forEach(card -> rows.add(test(one, card)));
        rows.add(decision(one));
      }
    }
    return new RecordSection(
        RecordTable.CASTINGS,
        List.of("casting", "test", "answer", "note"),
        rows,
        "Block and heads: NOT CHECKED here.");
  }

  private static RecordSection.Row test(Castings.Casting one, CheckCard card) {
    return new RecordSection.Row(
        List.of(one.words(), card.check().title(), card.look().word(), card.note()),
        card.look() == Look.NOT_LOOKED);
  }

  private static RecordSection.Row decision(Castings.Casting one) {
    String photographs = one.photographs() == 0 ? "" : one.photographs() + " photographed; ";
    return new RecordSection.Row(
        List.of(one.words(), "Decided", one.decided(), photographs + one.reason()), one.isOpen());
  }
}
