package wherefrom.job.change;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryFold;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.entry.ChangePlanned;
import wherefrom.job.entry.PlanDropped;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.Consequence;

/** The plans that are neither dropped nor carried out. */
final class OpenPlans {
  private static final EntryFold<OpenPlans> READS =
      EntryFold.<OpenPlans>none()
          .on(ChangePlanned.class, OpenPlans::plan)
          .on(PlanDropped.class, (plans, dropped) -> plans.open.remove(dropped.plan()))
          .on(ChangeMade.class, (plans, made) -> plans.open.remove(made.plan()));

  private final Function<Change, List<Consequence>> preview;
  private final Map<Integer, PlannedChange> open = new LinkedHashMap<>();

  private OpenPlans(Function<Change, List<Consequence>> preview) {
    this.preview = preview;
  }

  /**
   * The plans in the order in which they were made.
   *
   * @param preview what a change would mean for the engine
   */
  static List<PlannedChange> of(EngineJob job, Function<Change, List<Consequence>> preview) {
    OpenPlans plans = new OpenPlans(preview);
    job.standing().forEach(logged -> READS.take(plans, logged));
    return List.copyOf(plans.open.values());
  }

  private void plan(ChangePlanned planned) {
    Change change = planned.change();
    open.put(planned.plan(), new PlannedChange(planned.plan(), change, preview.apply(change)));
  }
}
