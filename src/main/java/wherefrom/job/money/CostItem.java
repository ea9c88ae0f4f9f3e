package wherefrom.job.money;

import wherefrom.quantity.Money;
import wherefrom.rules.consequence.Goods;

/**
 * A line of what something costs: pieces times price. Without a price it counts nothing, and says
 * so.
 *
 * @param what in words; the sort, where it must be of one
 * @param thing what it is, whatever its sort
 * @param because the rules that ask for it, or why it is bought
 */
public record CostItem(
    String what, Goods thing, int pieces, boolean priced, Money amount, String because) {

  /** {@code 2 × head gaskets, 40.00 (R14)}. */
  public String sentence() {
    String money = priced ? amount.text() : "no price typed";
    return pieces + " × " + what + ", " + money + " (" + because + ")";
  }
}
