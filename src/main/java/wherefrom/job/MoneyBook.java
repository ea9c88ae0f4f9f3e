package wherefrom.job;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import wherefrom.job.entry.BudgetSet;
import wherefrom.job.entry.CostDropped;
import wherefrom.job.entry.CostNoted;
import wherefrom.job.entry.CostState;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.PriceNoted;
import wherefrom.quantity.Money;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.Consequence;

/** Money: quoted, committed, paid, avoided by reuse, and what plans would do to the budget. */
public final class MoneyBook {

  /** What became of a request. */
  public sealed interface Answer {
    /** Kept; the budget line as it is now. */
    record Kept(Budget budget) implements Answer {}

    /** Not kept; the sentence says why and what to do. */
    record Refused(String sentence) implements Answer {}
  }

  private final OpenJob job;

  public MoneyBook(OpenJob job) {
    this.job = job;
  }

  /** Notes a cost line; number 0 makes a new one. */
  public Answer note(
      int number,
      String what,
      String about,
      CostState state,
      String amount,
      int plan,
      String note) {
    Optional<Money> money = Money.find(amount);
    if (what.isBlank()) {
      return new Answer.Refused("Say what it is for.");
    }
    if (money.isEmpty()) {
      return new Answer.Refused("\"" + amount + "\" is no amount: type it like 12.50.");
    }
    if (number != 0 && lines().stream().noneMatch(line -> line.number() == number)) {
      return new Answer.Refused("There is no cost line " + number + ".");
    }
    if (plan != 0 && new Planning(job).findPlan(plan).isEmpty()) {
      return new Answer.Refused("There is no open plan number " + plan + ".");
    }
    int line = number == 0 ? nextLine() : number;
    job.record(
        new CostNoted(line, what.strip(), about, state, money.get().cents(), plan, note.strip()));
    return new Answer.Kept(budget());
  }

  /** Moves a line on: quoted to committed, committed to paid. */
  public Answer move(int number, CostState state) {
    return lines().stream()
        .filter(line -> line.number() == number)
        .findFirst()
        .map(
            line ->
                note(
                    number,
                    line.what(),
                    line.about(),
                    state,
                    line.amount().text(),
                    line.plan(),
                    line.note()))
        .orElseGet(() -> new Answer.Refused("There is no cost line " + number + "."));
  }

  public Answer drop(int number, String reason) {
    if (lines().stream().noneMatch(line -> line.number() == number)) {
      return new Answer.Refused("There is no cost line " + number + ".");
    }
    job.record(new CostDropped(number, reason.strip()));
    return new Answer.Kept(budget());
  }

  /** Sets the budget; the currency by its three letters (ISO 4217). */
  public Answer setBudget(String amount, int contingencyPercent, String currency) {
    Optional<Money> money = Money.find(amount);
    if (money.isEmpty() || contingencyPercent < 0 || contingencyPercent > 100) {
      return new Answer.Refused("Type the budget like 1500 and the contingency from 0 to 100 %.");
    }
    if (!currency.matches("[A-Z]{3}")) {
      return new Answer.Refused("The currency is three capital letters, such as EUR.");
    }
    job.record(new BudgetSet(money.get().cents(), contingencyPercent, currency));
    return new Answer.Kept(budget());
  }

  /** The price of one piece, by a kind's plural or the words of a thing to buy. */
  public Answer setPrice(String what, String amount) {
    Optional<Money> money = Money.find(amount);
    if (money.isEmpty() || what.isBlank()) {
      return new Answer.Refused("\"" + amount + "\" is no amount: type it like 12.50.");
    }
    job.record(new PriceNoted(what.strip(), money.get().cents()));
    return new Answer.Kept(budget());
  }

  /** The lines that stand; a line of a plan that was dropped is gone. */
  public List<CostLine> lines() {
    Map<Integer, CostLine> lines = new TreeMap<>();
    for (LoggedEntry logged : job.state().standing()) {
      JobEntry entry = logged.entry();
      if (entry instanceof CostNoted cost) {
        lines.put(
            cost.line(),
            new CostLine(
                cost.line(),
                cost.what(),
                cost.about(),
                cost.state(),
                Money.ofCents(cost.cents()),
                cost.plan(),
                cost.note()));
      } else if (entry instanceof CostDropped dropped) {
        lines.remove(dropped.line());
      }
    }
    Set<Integer> dropped = droppedPlans();
    lines.values().removeIf(line -> dropped.contains(line.plan()));
    return List.copyOf(lines.values());
  }

  private Set<Integer> droppedPlans() {
    return job.state().standing().stream()
        .filter(logged -> logged.entry() instanceof wherefrom.job.entry.PlanDropped)
        .map(logged -> ((wherefrom.job.entry.PlanDropped) logged.entry()).plan())
        .collect(Collectors.toSet());
  }

  /** The budget line as it is now. */
  public Budget budget() {
    return budget(Money.ZERO);
  }

  private Budget budget(Money more) {
    Map<CostState, Money> sums = new LinkedHashMap<>();
    Set<Integer> open =
        new Planning(job).plans().stream().map(Plan::number).collect(Collectors.toSet());
    Money planned = more;
    for (CostLine line : lines()) {
      if (open.contains(line.plan()) && line.state() != CostState.AVOIDED) {
        planned = planned.plus(line.amount());
      } else {
        sums.merge(line.state(), line.amount(), Money::plus);
      }
    }
    BudgetSet set = findBudget().orElse(new BudgetSet(0, 0, ""));
    Money quoted = sums.getOrDefault(CostState.QUOTED, Money.ZERO);
    Money committed = sums.getOrDefault(CostState.COMMITTED, Money.ZERO);
    Money paid = sums.getOrDefault(CostState.PAID, Money.ZERO);
    Money costs = quoted.plus(committed).plus(paid).plus(planned);
    return new Budget(
        Money.ofCents(set.cents()),
        set.currency(),
        set.contingencyPercent(),
        quoted,
        committed,
        paid,
        sums.getOrDefault(CostState.AVOIDED, Money.ZERO),
        percent(costs, set.contingencyPercent()),
        planned);
  }

  /** Rounded half up to whole cents. */
  private static Money percent(Money of, int percent) {
    BigInteger hundredths =
        BigInteger.valueOf(of.cents())
            .multiply(BigInteger.valueOf(percent))
            .add(BigInteger.valueOf(50));
    return Money.ofCents(hundredths.divide(BigInteger.valueOf(100)).longValueExact());
  }

  /** What a change would cost: all that its rules say must be new, at the prices typed. */
  public PlanCost effect(Change change) {
    Map<String, Money> prices = prices();
    List<PlanCost.Item> items = new ArrayList<>();
    Money sum = Money.ZERO;
    for (Consequence consequence : new Planning(job).preview(change)) {
      if (consequence.pieces() > 0) {
        Optional<Money> price = Optional.ofNullable(prices.get(consequence.subject()));
        Money amount = times(price.orElse(Money.ZERO), consequence.pieces());
        sum = sum.plus(amount);
        items.add(
            new PlanCost.Item(
                consequence.subject(),
                consequence.pieces(),
                price.isPresent(),
                amount,
                consequence.rule()));
      }
    }
    return new PlanCost(items, sum, budget(sum));
  }

  private static Money times(Money price, int pieces) {
    return Money.ofCents(Math.multiplyExact(price.cents(), pieces));
  }

  /** The prices typed, by what they are for. */
  public Map<String, Money> prices() {
    Map<String, Money> prices = new TreeMap<>();
    for (LoggedEntry logged : job.state().standing()) {
      if (logged.entry() instanceof PriceNoted price) {
        prices.put(price.what(), Money.ofCents(price.cents()));
      }
    }
    return prices;
  }

  private Optional<BudgetSet> findBudget() {
    Optional<BudgetSet> found = Optional.empty();
    for (LoggedEntry logged : job.state().standing()) {
      if (logged.entry() instanceof BudgetSet set) {
        found = Optional.of(set);
      }
    }
    return found;
  }

  private int nextLine() {
    return 1
        + job.history().stream()
            .filter(logged -> logged.entry() instanceof CostNoted)
            .mapToInt(logged -> ((CostNoted) logged.entry()).line())
            .max()
            .orElse(0);
  }
}
