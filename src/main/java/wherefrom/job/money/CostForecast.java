package wherefrom.job.money;

import java.util.List;
import java.util.Locale;
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
import wherefrom.parts.PartKind;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.Money;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.Goods;

/**
 * What decisions, changes and open plans will cost, and what reuse avoids, at the prices typed.
 * What a cost line speaks of is left to that line.
 */
final class CostForecast {
  /** Lines that shops write for several pieces of work at once (common practice, no source). */
  private static final Map<String, Set<Goods>> BILLS =
      Map.of(
          "bored and honed", Set.of(Goods.BORING, Goods.HONING),
          "crankshaft ground", Set.of(Goods.ROD_GRINDING, Goods.MAIN_GRINDING, Goods.POLISHING),
          "heads reworked",
              Set.of(Goods.HEAD_MILLING, Goods.VALVE_JOB, Goods.SEATS_CUT, Goods.STUD_TAPPING));

  private final OpenJob job;
  private final MoneyEntries entries;
  private final Map<String, Money> prices;

  CostForecast(OpenJob job) {
    this.job = job;
    this.entries = new MoneyEntries(job.state());
    this.prices = entries.prices();
  }

  /** Still to be paid for and in no line; what coming changes follow may be reckoned on top. */
  List<CostItem> toBuy(List<Consequence> more) {
    CostList list = CostList.standing(job.state());
    new Planning(job).plans().forEach(plan -> list.with(plan.consequences()));
    Set<String> spokenOf = spokenOf(line -> line.state() != CostState.AVOIDED);
    return list.with(more).items(prices).stream()
        .filter(item -> !isAmong(spokenOf, item.what(), item.thing()))
        .toList();
  }

  static Money sum(List<CostItem> items) {
    return items.stream().map(CostItem::amount).reduce(Money.ZERO, Money::plus);
  }

  /** The price of what is decided to be used again, and may be. */
  Money avoided() {
    Set<String> spokenOf = spokenOf(line -> line.state() == CostState.AVOIDED);
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
      if (!isAmong(spokenOf, one.getKey().id(), one.getKey())) {
        long cents = prices.getOrDefault(one.getKey().id(), Money.ZERO).cents();
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

  private Set<String> spokenOf(Predicate<CostLine> counts) {
    return entries.lines().stream()
        .filter(counts)
        .flatMap(line -> Stream.of(plain(line.what()), plain(line.about())))
        .collect(Collectors.toSet());
  }

  /** A line about a kind speaks of every sort of it. */
  private static boolean isAmong(Set<String> spokenOf, String what, Goods thing) {
    return spokenOf.contains(plain(what))
        || (thing.isPart() && spokenOf.contains(thing.id()))
        || BILLS.entrySet().stream()
            .anyMatch(bill -> bill.getValue().contains(thing) && spokenOf.contains(bill.getKey()));
  }

  /** The id of a kind, whether its key, its word or its plural stands there. */
  private static String plain(String what) {
    String small = what.strip().toLowerCase(Locale.ROOT);
    for (PartKind kind : PartKind.values()) {
      if (small.equals(kind.key()) || small.equals(kind.word()) || small.equals(kind.plural())) {
        return Goods.of(kind).id();
      }
    }
    return small;
  }
}
