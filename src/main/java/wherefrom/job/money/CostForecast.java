package wherefrom.job.money;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wherefrom.inspection.Decision;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.CostState;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.Money;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.Goods;

/**
 * What decisions, changes and open plans will cost, and what reuse avoids, at the prices typed.
 * What a cost line speaks of is left to that line.
 */
final class CostForecast {
  private final OpenJob job;
  private final MoneyEntries entries;
  private final Map<Article, Money> prices;

  CostForecast(OpenJob job) {
    this.job = job;
    this.entries = new MoneyEntries(job.state());
    this.prices = entries.prices();
  }

  /** Still to be paid for and in no line; what coming changes follow may be reckoned on top. */
  List<CostItem> toBuy(List<Consequence> more) {
    CostList list = CostList.standing(job.state());
    new Planning(job).plans().forEach(plan -> list.with(plan.consequences()));
    Set<Article> spokenOf = spokenOf(line -> line.state() != CostState.AVOIDED);
    return list.with(more).withGaskets().items(prices).stream()
        .filter(item -> !isAmong(spokenOf, item.what(), item.thing()))
        .toList();
  }

  static Money sum(List<CostItem> items) {
    return items.stream().map(CostItem::amount).reduce(Money.ZERO, Money::plus);
  }

  /** The price of what is decided to be used again, and may be. */
  Money avoided() {
    Set<Article> spokenOf = spokenOf(line -> line.state() == CostState.AVOIDED);
    Map<Goods, Integer> reused = new TreeMap<>();
    for (PartRecord part : job.state().parts()) {
      boolean used = !part.part().fresh() && part.where() != Whereabouts.RETIRED;
      boolean may = used && job.state().rules().findBan(part).isEmpty();
      if (may && part.decision().equals(Optional.of(Decision.REUSE))) {
        reused.merge(Goods.of(part.part().kind()), part.part().pieces(), Integer::sum);
      }
    }
    Money sum = Money.ZERO;
    for (Map.Entry<Goods, Integer> one : reused.entrySet()) {
      Article article = new Article.Known(one.getKey());
      if (!isAmong(spokenOf, article, one.getKey())) {
        long cents = prices.getOrDefault(article, Money.ZERO).cents();
        sum = sum.plus(Money.ofCents(Math.multiplyExact(cents, (long) one.getValue())));
      }
    }
    return sum;
  }

  /** Whether it counts nothing: no price is typed, and no cost line speaks of it. */
  boolean isUncounted(CostItem item) {
    return !item.priced()
        && !isAmong(spokenOf(line -> line.state() != CostState.AVOIDED), item.what(), item.thing());
  }

  /** What of this adds nothing to the total, and why: {@code already in the plan}. */
  Map<Article, String> counted(List<CostItem> items, List<Consequence> more) {
    Map<Article, Integer> before = pieces(toBuy(List.of()));
    Map<Article, Integer> after = pieces(toBuy(more));
    Set<Article> spokenOf = spokenOf(line -> line.state() != CostState.AVOIDED);
    Map<Article, String> counted = new TreeMap<>();
    for (CostItem item : items) {
      if (isAmong(spokenOf, item.what(), item.thing())) {
        counted.put(item.what(), "already in the costs");
      } else if (before.containsKey(item.what())
          && after.getOrDefault(item.what(), 0).equals(before.get(item.what()))) {
        counted.put(item.what(), "already in the plan");
      }
    }
    return counted;
  }

  private static Map<Article, Integer> pieces(List<CostItem> items) {
    return items.stream().collect(Collectors.toMap(CostItem::what, CostItem::pieces, Integer::sum));
  }

  private Set<Article> spokenOf(Predicate<CostLine> counts) {
    return entries.lines().stream()
        .filter(counts)
        .flatMap(line -> Stream.of(line.what(), Article.read(line.about())))
        .collect(Collectors.toSet());
  }

  /** A line about a kind speaks of every sort of it. */
  private static boolean isAmong(Set<Article> spokenOf, Article what, Goods thing) {
    return spokenOf.contains(what)
        || (thing.findKind().isPresent() && spokenOf.contains(new Article.Known(thing)))
        || ShopBill.listOf(thing).stream().anyMatch(spokenOf::contains);
  }
}
