package wherefrom.job.money;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryFold;
import wherefrom.job.LoggedEntry;
import wherefrom.job.entry.BudgetSet;
import wherefrom.job.entry.CostDropped;
import wherefrom.job.entry.CostNoted;
import wherefrom.job.entry.CostState;
import wherefrom.job.entry.PlanDropped;
import wherefrom.job.entry.PriceNoted;
import wherefrom.quantity.Money;
import wherefrom.rules.consequence.Article;

/** What the standing entries say of money. */
public final class MoneyEntries {
  private static final EntryFold<Map<Integer, CostLine>> LINES =
      EntryFold.<Map<Integer, CostLine>>none()
          .on(CostNoted.class, (lines, cost) -> lines.put(cost.line(), line(cost)))
          .on(CostDropped.class, (lines, dropped) -> lines.remove(dropped.line()));

  private final EngineJob job;

  public MoneyEntries(EngineJob job) {
    this.job = job;
  }

  /** The lines that stand; a line of a plan that was dropped is gone. */
  List<CostLine> lines() {
    Map<Integer, CostLine> lines = new TreeMap<>();
    job.standing().forEach(logged -> LINES.take(lines, logged));
    Set<Integer> dropped = droppedPlans();
    lines.values().removeIf(line -> dropped.contains(line.plan()));
    return List.copyOf(lines.values());
  }

  private static CostLine line(CostNoted cost) {
    return new CostLine(
        cost.line(),
        cost.what(),
        cost.about(),
        cost.state(),
        Money.ofCents(cost.cents()),
        cost.plan(),
        cost.note());
  }

  private Set<Integer> droppedPlans() {
    return job.standing().stream()
        .filter(logged -> logged.entry() instanceof PlanDropped)
        .map(logged -> ((PlanDropped) logged.entry()).plan())
        .collect(Collectors.toSet());
  }

  /** Whether a cost line says that it is committed or paid. */
  boolean isOrdered(Article what) {
    return lines().stream()
        .filter(line -> Article.read(line.what()).equals(what))
        .anyMatch(line -> line.state() == CostState.COMMITTED || line.state() == CostState.PAID);
  }

  /** The prices typed, by what they are for. */
  public Map<Article, Money> prices() {
    Map<Article, Money> prices = new TreeMap<>();
    for (LoggedEntry logged : job.standing()) {
      if (logged.entry() instanceof PriceNoted price) {
        prices.put(price.what(), Money.ofCents(price.cents()));
      }
    }
    return prices;
  }

  Optional<BudgetSet> findBudget() {
    Optional<BudgetSet> found = Optional.empty();
    for (LoggedEntry logged : job.standing()) {
      if (logged.entry() instanceof BudgetSet set) {
        found = Optional.of(set);
      }
    }
    return found;
  }
}
