package wherefrom.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import wherefrom.inspection.Decision;
import wherefrom.job.entry.CostState;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.quantity.Money;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.ConsequenceRules;

/**
 * What decisions and open plans will cost, and what reuse avoids, at the prices typed. What a cost
 * line speaks of is left to that line.
 */
final class Foreseen {
  private static final Map<String, PartKind> SORTS = ConsequenceRules.sorts();

  private final OpenJob job;
  private final MoneyEntries entries;
  private final Map<String, Money> prices;

  Foreseen(OpenJob job) {
    this.job = job;
    this.entries = new MoneyEntries(job.state());
    this.prices = entries.prices();
  }

  /** Still to be bought, at the prices typed; a change may be reckoned with on top. */
  Money toBuy(Optional<Change> more) {
    return sum(wanted(more), line -> line.state() != CostState.AVOIDED);
  }

  /** The price of what is decided to be used again, and may be. */
  Money avoided() {
    Map<String, Integer> reused = new TreeMap<>();
    for (PartRecord part : job.state().parts()) {
      boolean may = job.state().rules().findBan(part).isEmpty();
      if (may && part.decision().equals(Optional.of(Decision.REUSE))) {
        reused.merge(part.part().kind().plural(), part.part().pieces(), Integer::sum);
      }
    }
    return sum(reused, line -> line.state() == CostState.AVOIDED);
  }

  private Money sum(Map<String, Integer> pieces, Predicate<CostLine> counts) {
    Set<String> spokenOf = spokenOf(counts);
    Money sum = Money.ZERO;
    for (Map.Entry<String, Integer> one : pieces.entrySet()) {
      Money price = prices.getOrDefault(one.getKey(), Money.ZERO);
      if (!isAmong(spokenOf, one.getKey())) {
        sum = sum.plus(times(price, one.getValue()));
      }
    }
    return sum;
  }

  /** Whether it counts nothing: no price is typed, and no cost line speaks of it. */
  boolean isUncounted(String what) {
    return !prices.containsKey(what)
        && !isAmong(spokenOf(line -> line.state() != CostState.AVOIDED), what);
  }

  private Set<String> spokenOf(Predicate<CostLine> counts) {
    return entries.lines().stream()
        .filter(counts)
        .flatMap(line -> List.of(plain(line.what()), plain(line.about())).stream())
        .collect(Collectors.toSet());
  }

  /** A line about a kind speaks of every sort of it. */
  private static boolean isAmong(Set<String> spokenOf, String what) {
    PartKind kind = SORTS.get(what);
    return spokenOf.contains(plain(what)) || (kind != null && spokenOf.contains(kind.plural()));
  }

  /** The plural of a kind, whether its key, its word or its plural stands there. */
  private static String plain(String what) {
    String small = what.strip().toLowerCase(Locale.ROOT);
    for (PartKind kind : PartKind.values()) {
      if (small.equals(kind.key()) || small.equals(kind.word())) {
        return kind.plural();
      }
    }
    return small;
  }

  static Money times(Money price, int pieces) {
    return Money.ofCents(Math.multiplyExact(price.cents(), pieces));
  }

  /** Two plans that ask for the same want it once. */
  private Map<String, Integer> wanted(Optional<Change> more) {
    Map<String, Integer> wanted = new TreeMap<>(decided());
    Planning planning = new Planning(job);
    List<List<Consequence>> plans = new ArrayList<>();
    planning.plans().forEach(plan -> plans.add(plan.consequences()));
    more.ifPresent(change -> plans.add(planning.preview(change)));
    plans.add(
        planning.standing().stream()
            .map(StandingRule::consequence)
            .filter(consequence -> consequence.kinds().isEmpty() || consequence.isOtherSort())
            .toList());
    for (List<Consequence> plan : plans) {
      pieces(plan).forEach((what, pieces) -> wanted.merge(what, pieces, Math::max));
    }
    // Parts of another sort come in place of the old sort, not beside it.
    SORTS.forEach(
        (sort, kind) -> {
          if (wanted.containsKey(sort)) {
            wanted.remove(kind.plural());
          }
        });
    return wanted;
  }

  /** What must be replaced, and what was replaced already. */
  private Map<String, Integer> decided() {
    Map<String, Integer> decided = new TreeMap<>();
    for (Replacement line : new ReplacementList(job.state()).lines()) {
      decided.merge(line.kind().plural(), line.pieces(), Integer::sum);
    }
    job.state().parts().stream()
        .map(PartRecord::part)
        .filter(part -> part.fresh())
        .forEach(part -> decided.merge(part.kind().plural(), part.pieces(), Integer::sum));
    return decided;
  }

  private static Map<String, Integer> pieces(List<Consequence> consequences) {
    Map<String, Integer> pieces = new LinkedHashMap<>();
    for (Consequence consequence : consequences) {
      split(consequence).forEach((what, count) -> pieces.merge(what, count, Math::max));
    }
    return pieces;
  }

  /** Pieces by kind where each kind's places are known; as one thing to buy otherwise. */
  static Map<String, Integer> split(Consequence consequence) {
    if (consequence.pieces() == 0) {
      return Map.of();
    }
    if (consequence.isOtherSort()) {
      return Map.of(consequence.subject(), consequence.pieces());
    }
    Map<String, Integer> pieces = new LinkedHashMap<>();
    consequence.places().stream()
        .map(Place::kind)
        .sorted()
        .forEach(kind -> pieces.merge(kind.plural(), 1, Integer::sum));
    int placed = pieces.values().stream().mapToInt(Integer::intValue).sum();
    return placed == consequence.pieces() && pieces.size() == consequence.kinds().size()
        ? pieces
        : Map.of(consequence.subject(), consequence.pieces());
  }
}
