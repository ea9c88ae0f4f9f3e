package wherefrom.job;

import wherefrom.quantity.Money;

/**
 * The budget line.
 *
 * @param limit what may be spent; zero while nobody said
 * @param contingency what is laid by for what is found later
 * @param planned the lines that hang on open plans, whatever their state
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
    Money planned) {

  /** What the job costs as decided: quoted, committed and paid, without plans. */
  public Money costs() {
    return quoted.plus(committed).plus(paid);
  }

  /** Costs, plans and contingency together. */
  public Money total() {
    return costs().plus(planned).plus(contingency);
  }

  /** What is left; negative when the total passes the budget. */
  public Money left() {
    return limit.minus(total());
  }

  /** {@code Total 1250.00 USD passes the budget by 250.00 USD.} */
  public String sentence() {
    String head = "Total " + total().text() + " " + currency;
    if (limit.cents() == 0) {
      return head + "; no budget is set.";
    }
    return left().cents() < 0
        ? head + " passes the budget by " + Money.ZERO.minus(left()).text() + " " + currency + "."
        : head + "; " + left().text() + " " + currency + " left.";
  }
}
