package wherefrom.job.numbers;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import wherefrom.job.OpenJob;
import wherefrom.job.change.Planning;
import wherefrom.job.money.MoneyBook;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.Consequence;
import wherefrom.workings.plan.PlanColumn;

/** Works out what follows from a column of the plan: the changes that its figures amount to. */
public final class PlanFollowing {
  private PlanFollowing() {}

  public static PlanEffects of(OpenJob job, PlanColumn column) {
    Planning planning = new Planning(job);
    List<Change> changes = PlanChanges.of(column, planning.setting());
    Set<String> checks = new LinkedHashSet<>();
    for (Consequence one : planning.preview(changes)) {
      if (one.effect().isCheck()) {
        checks.add(one.sentence() + " (" + one.ruleWords() + ")");
      }
    }
    return new PlanEffects(new MoneyBook(job).effect(changes), List.copyOf(checks));
  }
}
