package wherefrom.job;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.entry.DecisionEntry;
import wherefrom.job.entry.LookRecorded;
import wherefrom.parts.Part;

/** What looks and readings say of a part, and since when. */
final class Findings {
  private final EngineJob job;

  Findings(EngineJob job) {
    this.job = job;
  }

  /** The worst judgement of a part's readings and, for a shell, of its bearing's clearance. */
  Look measured(int item, long after) {
    Part part = job.getPart(item).part();
    Stream<Look> own =
        job.measures().listResults(Subject.ofPart(item)).stream()
            .filter(result -> result.sequence() > after)
            .map(MeasuredResult::worst);
    Stream<Look> clearance =
        new OilClearances(job)
            .findFor(part).stream()
                .filter(found -> found.sequence() > after)
                .map(BearingClearance::look);
    return Stream.concat(own, clearance).max(Look::compareTo).orElse(Look.NOT_LOOKED);
  }

  /** The worst that was found after the latest decision. */
  Look sinceDecision(int item) {
    long decided = 0;
    Map<String, Look> since = new HashMap<>();
    for (LoggedEntry logged : job.standing()) {
      if (logged.entry() instanceof DecisionEntry made && made.items().contains(item)) {
        decided = logged.sequence();
        since.clear();
      } else if (logged.entry() instanceof LookRecorded look && look.item() == item) {
        since.put(look.check(), look.look());
      }
    }
    Look looked = since.values().stream().max(Look::compareTo).orElse(Look.NOT_LOOKED);
    Look measured = measured(item, decided);
    return measured.compareTo(looked) > 0 ? measured : looked;
  }
}
