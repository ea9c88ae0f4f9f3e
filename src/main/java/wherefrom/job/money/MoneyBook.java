package wherefrom.job.money;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import wherefrom.job.OpenJob;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.BudgetSet;
import wherefrom.job.entry.CostDropped;
import wherefrom.job.entry.CostNoted;
import wherefrom.job.entry.CostState;
import wherefrom.job.entry.PriceNoted;
import wherefrom.quantity.JobCurrency;
import wherefrom.quantity.Money;
import wherefrom.rules.consequence.Article;
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

  /** Laid by for what is found later, in per cent, where nobody said (from memory, 15 to 20). */
  public static final int CONTINGENCY = 15;

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
    return job.asOne(() -> noteOnce(number, what, about, state, amount, plan, note));
  }

  private Answer noteOnce(
      int number,
      String what,
      String about,
      CostState state,
      String amount,
      int plan,
      String note) {
    Optional<Money> money = read(amount);
    if (what.isBlank()) {
      return new Answer.Refused("Say what it is for.");
    }
    if (money.isEmpty()) {
      return noAmount(amount);
    }
    Optional<CostLine> before = findLine(number);
    if (number != 0 && before.isEmpty()) {
      return new Answer.Refused("There is no cost line " + number + ".");
    }
    // A line keeps to the plan that it began with, carried out or not.
    boolean keepsPlan = before.filter(line -> line.plan() == plan).isPresent();
    if (plan != 0 && !keepsPlan && new Planning(job).findPlan(plan).isEmpty()) {
      return new Answer.Refused("There is no open plan number " + plan + ".");
    }
    int line = number == 0 ? nextLine() : number;
    job.record(
        new CostNoted(
            line, Article.read(what), about, state, money.get().cents(), plan, note.strip()));
    return new Answer.Kept(budget());
  }

  private Optional<Money> read(String amount) {
    return findTender().map(tender -> tender.read(amount)).orElseGet(() -> Money.find(amount));
  }

  private int decimals() {
    return findTender().map(JobCurrency::decimals).orElse(2);
  }

  private Answer noAmount(String amount) {
    String example = findTender().map(JobCurrency::example).orElse("12.50");
    return new Answer.Refused("\"" + amount + "\" is not an amount. Type it like " + example + ".");
  }

  /** Moves a line on: quoted to committed, committed to paid. */
  public Answer move(int number, CostState state) {
    return job.asOne(() -> moveOnce(number, state));
  }

  private Answer moveOnce(int number, CostState state) {
    return findLine(number)
        .map(
            line ->
                note(
                    number,
                    line.what().id(),
                    line.about(),
                    state,
                    line.amount().text(),
                    line.plan(),
                    line.note()))
        .orElseGet(() -> new Answer.Refused("There is no cost line " + number + "."));
  }

  public Answer drop(int number, String reason) {
    return job.asOne(() -> dropOnce(number, reason));
  }

  private Answer dropOnce(int number, String reason) {
    if (findLine(number).isEmpty()) {
      return new Answer.Refused("There is no cost line " + number + ".");
    }
    job.record(new CostDropped(number, reason.strip()));
    return new Answer.Kept(budget());
  }

  /** Sets the budget; the currency by its three letters (ISO 4217). */
  public Answer setBudget(String amount, int contingencyPercent, String currency) {
    return job.asOne(() -> setBudgetOnce(amount, contingencyPercent, currency));
  }

  private Answer setBudgetOnce(String amount, int contingencyPercent, String currency) {
    Optional<JobCurrency> tender = JobCurrency.find(currency);
    if (tender.isEmpty()) {
      return new Answer.Refused("The currency is three capital letters, such as USD.");
    }
    boolean sameCoins = tender.get().decimals() == decimals();
    if (!sameCoins && !lines().isEmpty()) {
      return new Answer.Refused("Amounts are not converted. First strike out the cost lines.");
    }
    Optional<Money> money = tender.get().read(amount);
    if (money.isEmpty() || contingencyPercent < 0 || contingencyPercent > 100) {
      return new Answer.Refused("Type the budget like 1500 and the contingency from 0 to 100 %.");
    }
    job.record(new BudgetSet(money.get().cents(), contingencyPercent, currency));
    return new Answer.Kept(budget());
  }

  /** The price of one piece. */
  public Answer setPrice(Article what, String amount) {
    return job.asOne(() -> setPriceOnce(what, amount));
  }

  private Answer setPriceOnce(Article what, String amount) {
    Optional<Money> money = read(amount);
    if (what.words().isBlank()) {
      return new Answer.Refused("Say what it is the price of.");
    }
    if (money.isEmpty()) {
      return noAmount(amount);
    }
    job.record(new PriceNoted(what, money.get().cents()));
    return new Answer.Kept(budget());
  }

  /** The lines that stand; a line of a plan that was dropped is gone. */
  public List<CostLine> lines() {
    return entries().lines();
  }

  private Optional<CostLine> findLine(int number) {
    return lines().stream().filter(line -> line.number() == number).findFirst();
  }

  private MoneyEntries entries() {
    return new MoneyEntries(job.state());
  }

  /** The currency of the job; empty while nobody typed an amount. */
  public Optional<JobCurrency> findTender() {
    return entries().findBudget().flatMap(set -> JobCurrency.find(set.currency()));
  }

  /** The job's currency, or else the one of the person's country. */
  public JobCurrency tender(Locale locale) {
    return findTender().orElseGet(() -> JobCurrency.of(locale));
  }

  /**
   * Keeps the currency with the job's first amount, so that no other country changes it: one act
   * with what notes the amount, and nothing where that is refused.
   */
  public Answer begin(Locale locale, Supplier<Answer> amount) {
    return job.asOne(
        () -> {
          if (entries().findBudget().isEmpty()) {
            job.record(new BudgetSet(0, CONTINGENCY, JobCurrency.of(locale).letters()));
          }
          return amount.get();
        },
        answer -> answer instanceof Answer.Kept);
  }

  /** The budget line as it is now. */
  public Budget budget() {
    return new BudgetSums(job).with(toBuy());
  }

  /**
   * What a change would cost: all that its rules say must be new or must be done, at the prices
   * typed, and what its checks may ask for.
   */
  public PlanCost effect(Change change) {
    return effect(List.of(change));
  }

  /** What changes would cost together: each piece once, whichever of them ask for it. */
  public PlanCost effect(List<Change> changes) {
    return cost(new Planning(job).preview(changes));
  }

  private PlanCost cost(List<Consequence> consequences) {
    CostList list = CostList.of(job.state()).with(consequences);
    List<CostItem> items = list.items(prices());
    CostForecast foreseen = new CostForecast(job);
    return new PlanCost(
        items,
        list.perhaps(prices()),
        CostForecast.sum(items),
        items.stream().anyMatch(foreseen::isUncounted),
        foreseen.counted(items, consequences),
        new BudgetSums(job).with(foreseen.toBuy(consequences)));
  }

  /** What decisions, changes and open plans ask for and no cost line speaks of. */
  public List<CostItem> toBuy() {
    return new CostForecast(job).toBuy(List.of());
  }

  /** The prices typed, by what they are for. */
  public Map<Article, Money> prices() {
    return entries().prices();
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
