package wherefrom.job.numbers;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import wherefrom.job.EngineJob;
import wherefrom.job.MoneyBook;
import wherefrom.job.OpenJob;
import wherefrom.job.Planning;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;
import wherefrom.quantity.Money;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.Consequence;
import wherefrom.workings.plan.PlanColumn;

/**
 * Works out what follows from a column of the plan. Two changes that ask for the same parts at the
 * same places ask for them once; what is bought by the piece is taken at the most that one change
 * asks for.
 */
public final class PlanFollowing {
  /** Services are done at banks, or on all of the engine at once. */
  private static final Set<ChangeKind> SERVICES =
      Set.of(
          ChangeKind.HEAD_MILLED, ChangeKind.DECK_MILLED, ChangeKind.VALVE_JOB, ChangeKind.BORED);

  /** Parts that a change brings in itself, and which rules therefore do not name. */
  private static final Map<ChangeKind, PartKind> NEW_PARTS =
      Map.of(
          ChangeKind.PUSHROD_REPLACED, PartKind.PUSHROD,
          ChangeKind.ROCKER_REPLACED, PartKind.ROCKER);

  private static final String RINGS = "piston ring sets";
  private static final String OVERSIZE_RINGS = "piston ring sets, oversize";

  private final EngineJob state;
  private final OpenJob job;
  private final Map<String, Money> prices;
  private final Map<String, Set<Place>> placed = new LinkedHashMap<>();
  private final Map<String, Integer> counted = new LinkedHashMap<>();
  private final Map<String, Set<String>> reasons = new LinkedHashMap<>();
  private final Set<String> checks = new LinkedHashSet<>();

  private PlanFollowing(OpenJob job) {
    this.job = job;
    this.state = job.state();
    this.prices = new MoneyBook(job).prices();
  }

  public static PlanEffects of(OpenJob job, PlanColumn column) {
    PlanFollowing following = new PlanFollowing(job);
    List<Change> changes = PlanChanges.of(column, job.state().layout());
    following.services(changes, column);
    following.newParts(changes);
    Planning planning = new Planning(job);
    changes.forEach(change -> planning.preview(change).forEach(following::take));
    return following.effects();
  }

  private void services(List<Change> changes, PlanColumn column) {
    for (Change change : changes) {
      if (SERVICES.contains(change.kind())) {
        counted.merge(change.kind().words(), 1, Integer::sum);
        because(change.kind().words(), "service");
      }
    }
    if (column.consequences().contains(wherefrom.workings.plan.Consequence.INTAKE_CORRECTED)) {
      counted.put("intake faces or manifold cut", state.layout().banks().size());
      because("intake faces or manifold cut", "service");
    }
  }

  private void newParts(List<Change> changes) {
    for (PartKind kind :
        new TreeSet<>(
            changes.stream()
                .flatMap(c -> Optional.ofNullable(NEW_PARTS.get(c.kind())).stream())
                .toList())) {
      counted.put(kind.plural(), Places.of(state.layout(), Set.of(kind)).size());
      because(kind.plural(), "the figures");
    }
  }

  private void take(Consequence consequence) {
    if (consequence.effect().isCheck()) {
      checks.add(consequence.sentence() + " (" + consequence.rule() + ")");
    }
    if (consequence.pieces() == 0) {
      return;
    }
    String subject = consequence.subject();
    if (consequence.places().size() == consequence.pieces()) {
      placed.computeIfAbsent(subject, any -> new HashSet<>()).addAll(consequence.places());
    } else {
      counted.merge(subject, consequence.pieces(), Math::max);
    }
    because(subject, consequence.rule());
  }

  private void because(String subject, String reason) {
    reasons.computeIfAbsent(subject, any -> new LinkedHashSet<>()).add(reason);
  }

  /** A bore that is opened takes the larger rings alone. */
  private void ringsOnce() {
    if (reasons.containsKey(OVERSIZE_RINGS)) {
      reasons.remove(RINGS);
    }
  }

  private PlanEffects effects() {
    ringsOnce();
    List<PlanEffects.Line> lines = new ArrayList<>();
    Money sum = Money.ZERO;
    for (Map.Entry<String, Set<String>> reason : reasons.entrySet()) {
      String subject = reason.getKey();
      int pieces =
          Math.max(counted.getOrDefault(subject, 0), placed.getOrDefault(subject, Set.of()).size());
      Optional<Money> price = Optional.ofNullable(prices.get(subject));
      Money amount =
          Money.ofCents(Math.multiplyExact(price.orElse(Money.ZERO).cents(), (long) pieces));
      sum = sum.plus(amount);
      lines.add(
          new PlanEffects.Line(
              subject, pieces, price.isPresent(), amount, String.join(", ", reason.getValue())));
    }
    return new PlanEffects(lines, new ArrayList<>(checks), sum, new MoneyBook(job).budgetWith(sum));
  }
}
