package wherefrom.job.money;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.quantity.Money;
import wherefrom.rules.consequence.Article;

/**
 * What one supplier asks for what is still to come.
 *
 * @param sum of all that it offers
 * @param lacks what it has no price for
 */
public record SupplierOffer(String supplier, List<Priced> items, Money sum, List<BuyLine> lacks) {

  /** A package as it was typed. */
  record PackPrice(int holds, Money price) {}

  /** A line at this supplier's price: whole packages. */
  public record Priced(BuyLine line, int packages, int holds, Money price, Money amount) {}

  public SupplierOffer {
    items = List.copyOf(items);
    lacks = List.copyOf(lacks);
  }

  static SupplierOffer of(String supplier, Map<Article, PackPrice> asked, List<BuyLine> lines) {
    List<BuyLine> open = lines.stream().filter(line -> line.open() > 0).toList();
    List<Priced> items =
        open.stream()
            .flatMap(
                line ->
                    Optional.ofNullable(asked.get(line.what())).stream()
                        .map(one -> priced(line, one)))
            .toList();
    Money sum = items.stream().map(Priced::amount).reduce(Money.ZERO, Money::plus);
    List<BuyLine> lacks = open.stream().filter(line -> !asked.containsKey(line.what())).toList();
    return new SupplierOffer(supplier, items, sum, lacks);
  }

  private static Priced priced(BuyLine line, PackPrice one) {
    int packages = new SoldAs(one.holds(), 0).packages(line.open());
    Money amount = Money.ofCents(Math.multiplyExact(one.price().cents(), (long) packages));
    return new Priced(line, packages, one.holds(), one.price(), amount);
  }

  /** What it asks for a line; empty where it lacks it. */
  public Optional<Priced> find(BuyLine line) {
    return items.stream().filter(item -> item.line().equals(line)).findFirst();
  }
}
