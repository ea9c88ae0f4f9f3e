package wherefrom.job.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import wherefrom.job.OpenJob;
import wherefrom.job.change.PlannedChange;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.BudgetSet;
import wherefrom.job.entry.CostState;
import wherefrom.quantity.JobCurrency;
import wherefrom.quantity.Money;

/** The sums of a job's cost lines beside its budget. */
final class BudgetSums {
  private final OpenJob job;
  private final MoneyEntries entries;

  BudgetSums(OpenJob job) {
    this.job = job;
    this.entries = new MoneyEntries(job.state());
  }

  /**
   * The budget line.
   *
   * @param list what is still to be bought, of which no cost line speaks
   */
  Budget with(List<CostItem> list) {
    Money toBuy = CostForecast.sum(list);
    Map<CostState, Money> sums = new LinkedHashMap<>();
    Set<Integer> open =
        new Planning(job).plans().stream().map(PlannedChange::number).collect(Collectors.toSet());
    Money planned = Money.ZERO;
    for (CostLine line : entries.lines()) {
      if (open.contains(line.plan()) && line.state() != CostState.AVOIDED) {
        planned = planned.plus(line.amount());
      } else {
        sums.merge(line.state(), line.amount(), Money::plus);
      }
    }
    CostForecast foreseen = new CostForecast(job);
    BudgetSet set = entries.findBudget().orElse(new BudgetSet(0, 0, ""));
    Money quoted = sums.getOrDefault(CostState.QUOTED, Money.ZERO);
    Money committed = sums.getOrDefault(CostState.COMMITTED, Money.ZERO);
    Money paid = sums.getOrDefault(CostState.PAID, Money.ZERO);
    Money costs = quoted.plus(committed).plus(paid).plus(planned).plus(toBuy);
    return new Budget(
        Money.ofCents(set.cents()),
        set.currency(),
        set.contingencyPercent(),
        quoted,
        committed,
        paid,
        sums.getOrDefault(CostState.AVOIDED, Money.ZERO).plus(foreseen.avoided()),
        percent(costs, set),
        planned,
        toBuy,
        list.stream().anyMatch(item -> !item.priced()));
  }

  /** Rounded half up to the currency's smallest coin. */
  private static Money percent(Money of, BudgetSet set) {
    int decimals = JobCurrency.find(set.currency()).map(JobCurrency::decimals).orElse(2);
    BigDecimal share =
        BigDecimal.valueOf(of.cents(), 2)
            .multiply(BigDecimal.valueOf(set.contingencyPercent(), 2))
            .setScale(decimals, RoundingMode.HALF_UP);
    return Money.ofCents(share.movePointRight(2).longValueExact());
  }
}
