package wherefrom.job.money;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryFold;
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
  private static final EntryFold<Taken> READS =
      EntryFold.<Taken>none()
          .on(CostNoted.class, (taken, cost) -> taken.lines.put(cost.line(), line(cost)))
          .on(CostDropped.class, (taken, dropped) -> taken.lines.remove(dropped.line()))
          .on(PlanDropped.class, (taken, dropped) -> taken.droppedPlans.add(dropped.plan()))
          .on(
              PriceNoted.class,
              (taken, price) -> taken.prices.put(price.what(), Money.ofCents(price.cents())))
          .on(BudgetSet.class, (taken, set) -> taken.budget = Optional.of(set));

  /** What was typed about money. */
  private static final class Taken {
    private final Map<Integer, CostLine> lines = new TreeMap<>();
    private final Set<Integer> droppedPlans = new HashSet<>();
    private final Map<Article, Money> prices = new TreeMap<>();
    private Optional<BudgetSet> budget = Optional.empty();
  }

  private final EngineJob job;

  public MoneyEntries(EngineJob job) {
    this.job = job;
  }

  private Taken taken() {
    return job.remember(Taken.class, state -> READS.all(new Taken(), state.standing()));
  }

  /** The lines that stand; a line of a plan that was dropped is gone. */
  List<CostLine> lines() {
    Taken taken = taken();
    return taken.lines.values().stream()
        .filter(line -> !taken.droppedPlans.contains(line.plan()))
        .toList();
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

  /** Whether a cost line says that it is committed or paid. */
  boolean isOrdered(Article what) {
    return lines().stream()
        .filter(line -> line.what().equals(what))
        .anyMatch(line -> line.state() == CostState.COMMITTED || line.state() == CostState.PAID);
  }

  /** The prices typed, by what they are for. */
  public Map<Article, Money> prices() {
    return Collections.unmodifiableMap(taken().prices);
  }

  Optional<BudgetSet> findBudget() {
    return taken().budget;
  }
}
