package wherefrom.job.money;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import wherefrom.engine.ValveSide;
import wherefrom.job.EngineJob;
import wherefrom.job.PartRecord;
import wherefrom.job.StandingRule;
import wherefrom.job.bags.AlwaysNew;
import wherefrom.job.bags.BagBook;
import wherefrom.job.change.Bought;
import wherefrom.job.change.Cams;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.quantity.Money;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.Effect;
import wherefrom.rules.consequence.Goods;
import wherefrom.rules.consequence.Wanted;

/**
 * The one list of what costs money: what, at which place, and the how-manieth that is bought for
 * it. Whoever asks for the same piece asks for it once; every sum is a sum of this list.
 */
public final class CostList {
  /** One piece. */
  private record Piece(Goods thing, String at, int nth) {
    Piece first() {
      return new Piece(thing, at, 1);
    }
  }

  private final EngineJob job;
  private final Bought bought;
  private final Cams cams;
  private final GasketSet set;
  private final Map<String, Integer> had = new HashMap<>();
  private final Map<Piece, CostAsk> asks = new LinkedHashMap<>();
  private final Map<Piece, CostAsk> perhaps = new LinkedHashMap<>();

  /** What is asked for anyway, beside this list: it takes of the gasket set first. */
  private final Map<Piece, CostAsk> beside;

  private CostList(EngineJob job, Map<Piece, CostAsk> beside) {
    this.beside = beside;
    this.job = job;
    this.bought = Bought.of(job);
    this.cams = new Cams(job);
    this.set = GasketSet.of(job);
    job.parts().stream().map(PartRecord::part).filter(Part::fresh).forEach(this::count);
  }

  /** As another is, to add to. */
  private CostList(CostList other) {
    beside = other.beside;
    job = other.job;
    bought = other.bought;
    cams = other.cams;
    set = other.set;
    had.putAll(other.had);
    asks.putAll(other.asks);
    perhaps.putAll(other.perhaps);
  }

  /** A list of what changes alone would ask for. */
  static CostList of(EngineJob job) {
    return new CostList(job, standing(job).asks);
  }

  /** The list of what was bought, what was decided, and what follows from changes and findings. */
  public static CostList standing(EngineJob job) {
    return new CostList(job.remember(Standing.class, it -> new Standing(workOut(it))).list());
  }

  private record Standing(CostList list) {}

  private static CostList workOut(EngineJob job) {
    CostList list = new CostList(job, Map.of());
    list.bought();
    new ReplacementList(job).lines().forEach(list::replace);
    job.rules().all().forEach(list::follow);
    return list;
  }

  /** Adds what coming changes ask for. */
  CostList with(List<Consequence> consequences) {
    for (Consequence one : consequences) {
      for (Wanted wanted : one.wanted()) {
        Piece piece = new Piece(wanted.thing(), wanted.at(), coming(one, wanted));
        put(one.effect().isCheck() ? perhaps : asks, piece, ask(one, wanted));
      }
    }
    return this;
  }

  /**
   * Adds the gaskets and seals that a person put on the list, those that nothing above asks for:
   * last, so that a change that asks for the same ones does not count them twice.
   */
  CostList withGaskets() {
    BagBook book = BagBook.of(job);
    for (AlwaysNew line : book.areGasketsListed() ? AlwaysNew.of(book) : List.<AlwaysNew>of()) {
      int asked =
          asks.values().stream()
              .filter(ask -> ask.what().equals(line.article()))
              .mapToInt(CostAsk::pieces)
              .sum();
      if (asked < line.pieces()) {
        Goods thing = line.article().findGoods().orElse(Goods.GASKET_SET);
        CostAsk rest =
            new CostAsk(
                line.article(), "", line.pieces() - asked, false, false, Set.of(), "always new");
        asks.put(new Piece(thing, line.what(), 1), rest);
      }
    }
    return this;
  }

  private void count(Part part) {
    had.merge(part.home().key(), 1, Integer::sum);
    had.merge(Bought.at(part.home()), had.get(part.home().key()), Math::max);
  }

  private void bought() {
    Map<Place, Integer> counted = new HashMap<>();
    for (PartRecord record : job.parts()) {
      Part part = record.part();
      if (part.fresh()) {
        int nth = counted.merge(part.home(), 1, Integer::sum);
        Wanted wanted = Wanted.of(part.home(), bought.findSort(part));
        put(wanted, nth, part.pieces(), Set.of(), "taken on new");
        rings(part.home());
      }
    }
  }

  private void replace(Replacement line) {
    for (Place place : line.places()) {
      int nth = had.getOrDefault(place.key(), 0) + 1;
      put(Wanted.of(place, sort(place)), nth, pieces(place), Set.of(), line.reason());
      rings(place);
    }
  }

  private void rings(Place place) {
    PistonRings.ask(place)
        .ifPresent(ask -> put(asks, new Piece(Goods.RING_SETS, ask.at(), 1), ask));
  }

  private void put(Wanted wanted, int nth, int pieces, Set<String> rules, String why) {
    Piece piece = new Piece(wanted.thing(), wanted.at(), nth);
    put(asks, piece, new CostAsk(wanted.article(), wanted.at(), pieces, false, false, rules, why));
  }

  /** The sort that a part at this place must be of now. */
  private Optional<Article> sort(Place place) {
    return job.rules().all().stream()
        .filter(rule -> rule.consequence().isOtherSort())
        .filter(rule -> rule.consequence().places().contains(place))
        .max(Comparator.comparingLong(StandingRule::sequence))
        .flatMap(rule -> rule.consequence().findSort())
        .map(Article.Known::new);
  }

  /** What is banned and tracked stands among the parts to replace already. */
  private void follow(StandingRule rule) {
    Consequence one = rule.consequence();
    for (Wanted wanted : one.pieces() == 0 ? List.<Wanted>of() : one.wanted()) {
      boolean judged = wanted.findPlace().filter(job.places()::contains).isPresent();
      if (!one.effect().bans() || (rule.bans() && !judged)) {
        int nth =
            wanted.thing() == Goods.CAM
                ? cams.of(rule.sequence())
                : Math.max(1, had.getOrDefault(wanted.at(), 0));
        put(asks, new Piece(wanted.thing(), wanted.at(), nth), ask(one, wanted));
      }
    }
  }

  private int coming(Consequence one, Wanted wanted) {
    if (wanted.thing() == Goods.CAM) {
      return cams.next(one.cause().kind());
    }
    int before = had.getOrDefault(wanted.at(), 0);
    boolean served = wanted.findPlace().filter(place -> bought.serves(place, one)).isPresent();
    return served ? Math.max(1, before) : before + 1;
  }

  private CostAsk ask(Consequence one, Wanted wanted) {
    String why = one.ruleWords() + ": " + String.join("; so: ", one.reasons());
    int pieces = wanted.findPlace().map(this::pieces).orElse(1);
    boolean work = one.effect() == Effect.WORK;
    return new CostAsk(wanted.article(), wanted.at(), pieces, work, true, Set.of(one.rule()), why);
  }

  private int pieces(Place place) {
    return job.findOwner(place).map(Part::pieces).orElse(1);
  }

  private static void put(Map<Piece, CostAsk> list, Piece piece, CostAsk ask) {
    list.merge(piece, ask, (before, now) -> before.with(now, piece.thing()));
  }

  /** Everything on the list, a line for each thing. */
  List<CostItem> items(Map<Article, Money> prices) {
    return items(asks, without(beside, asks), prices, piece -> true);
  }

  /** What must be bought where a check fails, and is not bought anyway. */
  List<CostItem> perhaps(Map<Article, Money> prices) {
    Set<Piece> sure = new LinkedHashSet<>();
    asks.keySet().forEach(piece -> sure.add(piece.first()));
    Map<Piece, CostAsk> before = without(beside, perhaps);
    before.putAll(asks);
    return items(perhaps, before, prices, piece -> !sure.contains(piece.first()));
  }

  private static Map<Piece, CostAsk> without(Map<Piece, CostAsk> list, Map<Piece, CostAsk> same) {
    Map<Piece, CostAsk> rest = new HashMap<>(list);
    rest.keySet().removeAll(same.keySet());
    return rest;
  }

  /** What rules ask to buy and nobody has bought, besides the parts to replace. */
  List<Purchase> purchases() {
    Map<Purchase.Key, Purchase> lines = new LinkedHashMap<>();
    for (CostAsk ask : asks.values()) {
      if (ask.open() && !ask.work()) {
        Optional<ValveSide> side = Place.find(ask.at()).flatMap(Replacement::findSide);
        Purchase purchase = new Purchase(ask.what(), side, ask.pieces(), ask.why());
        lines.merge(purchase.key(), purchase, (one, more) -> one.of(one.pieces() + more.pieces()));
      }
    }
    return List.copyOf(lines.values());
  }

  /** What new parts for these places cost; empty where one has no price. */
  public Optional<Money> findCost(List<Place> places, Map<Article, Money> prices) {
    Money sum = Money.ZERO;
    for (Place place : places) {
      Optional<Money> price =
          Optional.ofNullable(prices.get(Wanted.of(place, sort(place)).article()));
      if (price.isEmpty()) {
        return Optional.empty();
      }
      long cents = Math.multiplyExact(price.get().cents(), (long) pieces(place));
      sum = sum.plus(Money.ofCents(cents));
    }
    return Optional.of(sum);
  }

  private List<CostItem> items(
      Map<Piece, CostAsk> asked,
      Map<Piece, CostAsk> before,
      Map<Article, Money> prices,
      Predicate<Piece> counts) {
    Map<Article, List<Map.Entry<Piece, CostAsk>>> lines = new LinkedHashMap<>();
    for (Map.Entry<Piece, CostAsk> one : asked.entrySet()) {
      if (counts.test(one.getKey())) {
        lines.computeIfAbsent(one.getValue().what(), what -> new ArrayList<>()).add(one);
      }
    }
    return lines.values().stream()
        .map(line -> item(line, before, prices))
        .filter(item -> item.pieces() > 0)
        .toList();
  }

  private CostItem item(
      List<Map.Entry<Piece, CostAsk>> line,
      Map<Piece, CostAsk> before,
      Map<Article, Money> prices) {
    List<CostAsk> asks = line.stream().map(Map.Entry::getValue).toList();
    int covered = covers(asks.get(0).what(), before);
    return CostItem.of(line.get(0).getKey().thing(), asks, covered, prices);
  }

  /** What a gasket set that was ordered or is here holds beyond what others take of it. */
  private int covers(Article what, Map<Piece, CostAsk> others) {
    int taken =
        others.values().stream()
            .filter(ask -> ask.what().equals(what))
            .mapToInt(CostAsk::pieces)
            .sum();
    return Math.max(0, set.covers(what) - taken);
  }
}
