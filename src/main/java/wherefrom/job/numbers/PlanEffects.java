package wherefrom.job.numbers;

import java.util.List;
import wherefrom.job.money.CostItem;
import wherefrom.job.money.PlanCost;

/**
 * What follows from a column of the plan: things to buy, work, checks, money.
 *
 * @param cost what it costs by itself, and the budget line as it would be
 * @param checks what is to be checked, a sentence each with its rule
 */
public record PlanEffects(PlanCost cost, List<String> checks) {

  public PlanEffects {
    checks = List.copyOf(checks);
  }

  /** Parts and work. */
  public List<CostItem> lines() {
    return cost.lines();
  }

  /** How many lines have no price. */
  public long unpriced() {
    return lines().stream().filter(line -> !line.priced()).count();
  }

  /** {@code 120.00, 3 without a price}. */
  public String moneyWords() {
    return cost.sum().text() + (unpriced() == 0 ? "" : ", " + unpricedWords());
  }

  /** The same, without a sum where nothing has a price: {@code 3 without a price}. */
  public String sumWords() {
    return isPriced() ? moneyWords() : unpricedWords();
  }

  private String unpricedWords() {
    return unpriced() + " without a price";
  }

  /** Whether there is a sum: a price is known, or nothing is to be bought. */
  public boolean isPriced() {
    return lines().isEmpty() || unpriced() < lines().size();
  }
}
