package wherefrom.job.tables;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import wherefrom.inspection.Decision;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryFold;
import wherefrom.job.LoggedEntry;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.DecisionEntry;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartOut;
import wherefrom.job.pages.TidyCell;
import wherefrom.job.pages.TidyTable;
import wherefrom.parts.Part;

/** The parts, and what was decided about them. */
final class PartTables {
  private static final EntryFold<Moved> MOVES =
      EntryFold.<Moved>none()
          .at(PartOut.class, (moved, came, at) -> moved.out().put(came.item(), at.time()))
          .at(PartFitted.class, (moved, fit, at) -> moved.fitted().put(fit.item(), at.time()));

  /** When each part came out last, and went in. */
  private record Moved(Map<Integer, Instant> out, Map<Integer, Instant> fitted) {}

  private PartTables() {}

  static TidyTable parts(EngineJob job) {
    Moved moved = MOVES.all(new Moved(new HashMap<>(), new HashMap<>()), job.standing());
    Rows rows =
        new Rows(
            "parts",
            "item",
            "tag",
            "kind",
            "home",
            "part",
            "new",
            "pieces",
            "is",
            "fitted_at",
            "worst_answer",
            "decision",
            "out_utc",
            "fitted_utc");
    for (PartRecord record : job.parts()) {
      Part part = record.part();
      boolean sits = job.findFittedAt(part.item()).isPresent();
      rows.add(
          TidyCell.of(part.item()),
          TidyCell.of(part.code(job.engine()).typed()),
          TidyCell.of(part.kind().key()),
          TidyCell.of(part.home().spot().key()),
          TidyCell.of(part.words()),
          TidyCell.of(part.fresh()),
          TidyCell.of(part.pieces()),
          TidyCell.of(record.where().words()),
          TidyCell.of(job.findFittedAt(part.item()).map(at -> at.spot().key()).orElse("")),
          TidyCell.of(job.bench().worst(part.item()).look().word()),
          TidyCell.of(record.decision().map(Decision::word).orElse("")),
          time(moved.out(), part.item()),
          sits ? time(moved.fitted(), part.item()) : TidyCell.NONE);
    }
    return rows.table();
  }

  private static TidyCell time(Map<Integer, Instant> times, int item) {
    Instant time = times.get(item);
    return time == null ? TidyCell.NONE : TidyCell.of(time);
  }

  /** Every decision that stands, the latest last. */
  static TidyTable decisions(EngineJob job) {
    Rows rows = new Rows("decisions", "sequence", "utc", "item", "part", "decision", "reason");
    for (LoggedEntry logged : job.standing()) {
      if (logged.entry() instanceof DecisionEntry made) {
        for (int item : made.items()) {
          rows.add(
              TidyCell.of(logged.sequence()),
              TidyCell.of(logged.time()),
              TidyCell.of(item),
              TidyCell.of(job.findPart(item).map(one -> one.part().words()).orElse("")),
              TidyCell.of(made.decision().word()),
              TidyCell.of(made.reason()));
        }
      }
    }
    return rows.table();
  }
}
