package wherefrom.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.entry.ChangePlanned;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.PlanDropped;
import wherefrom.job.entry.ShopLineAdded;
import wherefrom.job.entry.ShopLineBack;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.size.CutSurface;
import wherefrom.rules.size.SizeText;

/** The cuts that are planned, and those that the machine shop has in hand; the last one counts. */
final class ComingCuts {
  private record Coming(List<Change> changes, int pieces, String by) {
    Coming {
      changes = List.copyOf(changes);
    }
  }

  private final EngineJob job;
  private final Map<String, Coming> coming = new LinkedHashMap<>();

  ComingCuts(EngineJob job) {
    this.job = job;
  }

  void take(JobEntry entry) {
    if (entry instanceof ChangePlanned plan) {
      Change change = new Change(plan.change(), plan.where(), plan.detail());
      coming.put(plan(plan.plan()), new Coming(List.of(change), 1, plan(plan.plan())));
    } else if (entry instanceof PlanDropped dropped) {
      coming.remove(plan(dropped.plan()));
    } else if (entry instanceof ChangeMade made) {
      coming.remove(plan(made.plan()));
    } else if (entry instanceof ShopLineAdded line) {
      String size = line.target().map(Amount::text).orElse("");
      coming.put(
          line(line.visit(), line.line()),
          new Coming(
              line.work().changes(line.where(), size, job.layout()),
              line.count(),
              "visit " + line.visit()));
    } else if (entry instanceof ShopLineBack back) {
      coming.computeIfPresent(
          line(back.visit(), back.line()), (key, was) -> left(was, back.count()));
    }
  }

  /** Gone once the last piece is back, which a map does with a missing value. */
  private static @org.jspecify.annotations.Nullable Coming left(Coming was, int back) {
    int pieces = was.pieces() - back;
    return pieces > 0 ? new Coming(was.changes(), pieces, was.by()) : null;
  }

  private static String plan(int number) {
    return "plan " + number;
  }

  private static String line(int visit, int line) {
    return "visit " + visit + ", line " + line;
  }

  Optional<ComingCut> find(CutSurface surface, String where) {
    return coming.values().stream()
        .flatMap(
            one ->
                one.changes().stream()
                    .filter(change -> change.kind() == surface.change())
                    .filter(change -> change.where().isEmpty() || change.where().equals(where))
                    .map(change -> new ComingCut(size(change), one.by())))
        .reduce((earlier, later) -> later);
  }

  private Optional<Amount> size(Change change) {
    return SizeText.read(change.detail(), Typed.usual(job.units(), Dimension.LENGTH));
  }
}
