package wherefrom.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.entry.ChangePlanned;
import wherefrom.job.entry.PlanDropped;
import wherefrom.job.entry.ShopLineAdded;
import wherefrom.job.entry.ShopLineBack;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.size.CutSurface;

/** The cuts that are planned, and those that the machine shop has in hand; the last one counts. */
final class ComingCuts {
  private static final EntryFold<ComingCuts> READS =
      EntryFold.<ComingCuts>none()
          .on(ChangePlanned.class, ComingCuts::planned)
          .on(PlanDropped.class, (cuts, dropped) -> cuts.coming.remove(plan(dropped.plan())))
          .on(ChangeMade.class, (cuts, made) -> cuts.coming.remove(plan(made.plan())))
          .on(ShopLineAdded.class, ComingCuts::sent)
          .on(ShopLineBack.class, ComingCuts::back);

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

  /** Takes over what another job of the same engine has, as it is now. */
  void takeOver(ComingCuts other) {
    coming.putAll(other.coming);
  }

  void take(LoggedEntry logged) {
    READS.take(this, logged);
  }

  private void planned(ChangePlanned plan) {
    coming.put(plan(plan.plan()), new Coming(List.of(plan.change()), 1, plan(plan.plan())));
  }

  private void sent(ShopLineAdded line) {
    List<Change> changes = line.work().changes(line.where(), line.target(), job.layout());
    coming.put(
        line(line.visit(), line.line()),
        new Coming(changes, line.count(), "visit " + line.visit()));
  }

  private void back(ShopLineBack back) {
    coming.computeIfPresent(line(back.visit(), back.line()), (key, was) -> left(was, back.count()));
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
                    .map(change -> new ComingCut(change.size(), one.by())))
        .reduce((earlier, later) -> later);
  }
}
