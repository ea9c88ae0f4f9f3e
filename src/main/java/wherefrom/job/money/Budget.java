package wherefrom.job.money;

import wherefrom.quantity.JobCurrency;
import wherefrom.quantity.Money;

/**
 * The budget line.
 *
 * @param limit what may be spent; zero while nobody said
 * @param contingency what is laid by for what is found later
 * @param avoided what reuse saves: noted lines, and parts decided for reuse at the prices typed
 * @param planned the lines that hang on open plans, whatever their state
 * @param toBuy what decisions and open plans ask for, at the prices typed, and no line speaks of
 * @param atLeast whether something of that has no price, so that the total is only the least
 */
public record Budget(
    Money limit,
    String currency,
    int contingencyPercent,
    Money quoted,
    Money committed,
    Money paid,
    Money avoided,
    Money contingency,
    Money planned,
    Money toBuy,
    boolean atLeast) {

  /** What the job costs as decided: quoted, committed and paid, without plans. */
  public Money costs() {
    return quoted.plus(committed).plus(paid);
  }

  /** Costs, plans, what is still to be bought, and contingency together. */
  public Money total() {
    return costs().plus(planned).plus(toBuy).plus(contingency);
  }

  /** What is left; negative when the total passes the budget. */
  public Money left() {
    return limit.minus(total());
  }

  /** {@code Total at least 1250.00 USD is over the budget by at least 250.00 USD.} */
  public String sentence() {
    return atLeast ? sentence("at least ", "at most ") : sentence("", "");
  }

  /** The same in few words: {@code At least 1250.00 USD, 250.00 USD over the budget.} */
  public String brief() {
    String head = (atLeast ? "At least " : "") + text(total());
    if (limit.cents() == 0) {
      return head + ", no budget set.";
    }
    return isOver() ? head + ", " + text(over()) + " over the budget." : head + ", " + rest() + ".";
  }

  /** {@code 250.00 USD left}, {@code at least 250.00 USD over}: what is left of a budget. */
  public String rest() {
    String least = atLeast ? "at least " : "";
    String most = atLeast ? "at most " : "";
    return isOver() ? least + text(over()) + " over" : most + text(left()) + " left";
  }

  private Money over() {
    return Money.ZERO.minus(left());
  }

  private boolean isOver() {
    return left().cents() < 0;
  }

  private String sentence(String least, String most) {
    String head = "Total " + least + text(total());
    if (limit.cents() == 0) {
      return head + "; no budget is set.";
    }
    return isOver()
        ? head + " is over the budget by " + least + text(over()) + "."
        : head + "; " + most + text(left()) + " left.";
  }

  /** An amount in the job's currency. */
  public String text(Money money) {
    return JobCurrency.find(currency)
        .map(tender -> tender.text(money))
        .orElseGet(() -> (money.text() + " " + currency).strip());
  }
}
