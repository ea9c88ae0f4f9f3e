package wherefrom.job.money;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wherefrom.quantity.Money;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.Goods;

/**
 * A line of what something costs: pieces times price. Without a price it counts nothing, and says
 * so.
 *
 * @param what what is bought; the sort, where it must be of one
 * @param thing what it is, whatever its sort
 * @param rules the ids of those that ask for it; none where something else does
 * @param reason why it is bought where no rule asks for it
 */
public record CostItem(
    Article what,
    Goods thing,
    int pieces,
    boolean priced,
    Money amount,
    List<String> rules,
    String reason) {
  public CostItem {
    rules = List.copyOf(rules);
  }

  /** What is asked of one article, less what a set covers of it. */
  static CostItem of(
      Goods thing, Collection<CostAsk> asks, int covered, Map<Article, Money> prices) {
    CostAsk first = asks.iterator().next();
    int asked = asks.stream().mapToInt(CostAsk::pieces).sum();
    int pieces = Math.max(0, asked - covered);
    Optional<Money> price = Optional.ofNullable(prices.get(first.what()));
    long cents = Math.multiplyExact(price.orElse(Money.ZERO).cents(), (long) pieces);
    Set<String> rules = new LinkedHashSet<>();
    asks.forEach(one -> rules.addAll(one.rules()));
    return new CostItem(
        first.what(),
        thing,
        pieces,
        price.isPresent(),
        Money.ofCents(cents),
        List.copyOf(rules),
        first.why());
  }

  /** {@code 2 × head gaskets, 40.00 (rule 14)}. */
  public String sentence() {
    String money = priced ? amount.text() : "no price typed";
    return pieces + " × " + what.words() + ", " + money + " (" + why() + ")";
  }

  /** Why it is bought, as tables hold it: the ids of the rules, such as {@code R18, R32}. */
  public String because() {
    return rules.isEmpty() ? reason : String.join(", ", rules);
  }

  /** The same for people: {@code rule 18, rule 32}, as R18 would be a rod. */
  public String why() {
    return rules.isEmpty()
        ? reason
        : rules.stream().map(Consequence::ruleWords).collect(Collectors.joining(", "));
  }
}
