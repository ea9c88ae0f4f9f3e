package wherefrom.job.numbers;

import java.util.List;
import wherefrom.job.Budget;
import wherefrom.job.CostItem;
import wherefrom.quantity.Money;

/**
 * What follows from a column of the plan: things to buy, services, checks, money.
 *
 * @param lines parts and services
 * @param checks what is to be checked, a sentence each with its rule
 * @param sum of the lines that have a price
 * @param withIt the budget line as it would be
 */
public record PlanEffects(List<CostItem> lines, List<String> checks, Money sum, Budget withIt) {

  public PlanEffects {
    lines = List.copyOf(lines);
    checks = List.copyOf(checks);
  }

  /** How many lines have no price. */
  public long unpriced() {
    return lines.stream().filter(line -> !line.priced()).count();
  }

  /** {@code 120.00, 3 without a price}. */
  public String moneyWords() {
    String missing = unpriced() == 0 ? "" : ", " + unpriced() + " without a price";
    return sum.text() + missing;
  }
}
