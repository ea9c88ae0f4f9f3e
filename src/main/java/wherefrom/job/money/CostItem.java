package wherefrom.job.money;

import wherefrom.quantity.Money;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Goods;

/**
 * A line of what something costs: pieces times price. Without a price it counts nothing, and says
 * so.
 *
 * @param what what is bought; the sort, where it must be of one
 * @param thing what it is, whatever its sort
 * @param because the rules that ask for it, or why it is bought
 */
public record CostItem(
    Article what, Goods thing, int pieces, boolean priced, Money amount, String because) {

  /** {@code 2 × head gaskets, 40.00 (R14)}. */
  public String sentence() {
    String money = priced ? amount.text() : "no price typed";
    return pieces + " × " + what.words() + ", " + money + " (" + because + ")";
  }
}
