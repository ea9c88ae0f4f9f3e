package wherefrom.job.money;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wherefrom.quantity.Money;
import wherefrom.rules.consequence.Article;

/**
 * What a change would cost with all that it drags along.
 *
 * @param lines each thing to buy, with its price where one is known
 * @param perhaps what may have to be bought, where a check fails; not in the sum
 * @param sum of the lines whose price is known
 * @param atLeast whether something sure has no price, so that the sum is only the least
 * @param counted what of the lines adds nothing to the total, and why, in words
 * @param withIt the budget line as it would then be
 */
public record PlanCost(
    List<CostItem> lines,
    List<CostItem> perhaps,
    Money sum,
    boolean atLeast,
    Map<Article, String> counted,
    Budget withIt) {

  public PlanCost {
    lines = List.copyOf(lines);
    perhaps = List.copyOf(perhaps);
    counted = Map.copyOf(counted);
  }

  /** {@code +16 lifters, +8 ...; prices missing for: ...} and the budget's sentence. */
  public String sentence() {
    String unpriced = isAllUnpriced() ? "" : " (no price typed)";
    String sure = words("+", lines, unpriced);
    String maybe = words("", perhaps, unpriced);
    return (sure.isEmpty() ? "" : sure + ". ")
        + (maybe.isEmpty() ? "" : "If a check fails: " + maybe + ". ")
        + (isAllUnpriced() ? "No prices typed. " : "")
        + total();
  }

  /** The budget's sentence; it says where it is only the least. */
  public String total() {
    return withIt.sentence();
  }

  /** The same in few words. */
  public String briefTotal() {
    return withIt.brief();
  }

  /** That no price is typed is said once where nothing has one. */
  private boolean isAllUnpriced() {
    return Stream.concat(lines.stream(), perhaps.stream()).noneMatch(CostItem::priced)
        && lines.size() + perhaps.size() > 1;
  }

  private static String words(String sign, List<CostItem> items, String unpriced) {
    return items.stream()
        .map(
            item ->
                sign + item.pieces() + " " + item.what().words() + (item.priced() ? "" : unpriced))
        .collect(Collectors.joining(", "));
  }
}
