package wherefrom.job;

import java.util.List;
import wherefrom.quantity.Money;

/**
 * What a change would cost with all that it drags along.
 *
 * @param lines each thing to buy, with its price where one is known
 * @param sum of the lines whose price is known
 * @param withIt the budget line as it would then be
 */
public record PlanCost(List<Item> lines, Money sum, Budget withIt) {

  /** A thing to buy: pieces times price; without a price it counts nothing, and says so. */
  public record Item(String what, int pieces, boolean priced, Money amount, String because) {}

  public PlanCost {
    lines = List.copyOf(lines);
  }

  /** {@code +16 lifters, +8 ...; prices missing for: ...} and the budget's sentence. */
  public String sentence() {
    StringBuilder words = new StringBuilder();
    for (Item line : lines) {
      words.append(words.isEmpty() ? "" : ", ").append('+').append(line.pieces()).append(' ');
      words.append(line.what()).append(line.priced() ? "" : " (no price typed)");
    }
    return words + (words.isEmpty() ? "" : ". ") + withIt.sentence();
  }
}
