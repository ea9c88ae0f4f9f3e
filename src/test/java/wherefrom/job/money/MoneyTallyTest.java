package wherefrom.job.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.inspection.Decision;
import wherefrom.job.BenchJob;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.CostState;
import wherefrom.parts.Place;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Change;

/**
 * The money of random jobs, reckoned a second time by a {@link Till} that knows nothing of entries,
 * rules or cents, and a third time from the table that goes out.
 */
class MoneyTallyTest {
  private static final int JOBS = 60;
  private static final int STEPS = 40;

  private static final List<String> WORDS =
      List.of(
          "Boring",
          "lifters",
          "LIFTER",
          "Rod Shell",
          "rod-shell",
          "pistons",
          "main shells",
          "gasket set",
          "Spänne, groß",
          "said \"cheap\"",
          "two\nlines",
          "Bored and honed",
          "cam",
          "head gaskets");

  private static final List<String> ABOUT = List.of("", "", "", "lifter", "cam-bearing", "main-2");

  private static final List<String> PRICED =
      List.of(
          "lifters",
          "pushrods",
          "rod shells",
          "main shells",
          "pistons",
          "cam bearings",
          "gasket set",
          "head gaskets",
          "valve stem seals",
          "roller cam",
          "roller lifters",
          "flat lifters",
          "cam",
          "cam reground",
          "head milled",
          "deck milled",
          "bored",
          "honed only",
          "rod journals ground",
          "rod resized, or its bolts replaced",
          "valve job: seats or faces ground",
          "seats and throats cut for larger valves",
          "screw-in rocker studs",
          "head machined for screw-in studs",
          "rockers",
          "valves",
          "valve springs",
          "piston ring sets",
          "piston ring sets, oversize",
          "core plugs and gallery plugs");

  /** One job, its book, and the till beside it. */
  private static final class Run {
    final BenchJob bench = BenchJob.inline4();
    final MoneyBook book = new MoneyBook(bench.job);
    final Planning planning = new Planning(bench.job);
    final Random random;
    final String currency;
    final int decimals;
    final int coins;
    final int percent;
    final BigDecimal limit;
    Till till = new Till();
    final List<Till> before = new ArrayList<>();
    int lines;
    int plans;

    Run(long seed, String currency, int decimals) {
      this.random = new Random(seed);
      this.currency = currency;
      this.decimals = decimals;
      this.coins = decimals == 0 ? 0 : 2;
      this.percent = random.nextInt(31);
      this.limit = amount(9000);
      assertThat(book.setBudget(limit.toPlainString(), percent, currency))
          .isInstanceOf(MoneyBook.Answer.Kept.class);
    }

    BigDecimal amount(int most) {
      int unit = (int) Math.pow(10, decimals);
      return BigDecimal.valueOf(random.nextInt(most * unit), decimals);
    }

    <T> T any(List<T> list) {
      return list.get(random.nextInt(list.size()));
    }

    void step() {
      if (!before.isEmpty() && random.nextInt(8) == 0) {
        bench.job.undo();
        till = before.remove(before.size() - 1);
        return;
      }
      Till old = till;
      till = till.copy();
      before.add(old);
      switch (random.nextInt(9)) {
        case 0, 1 -> note();
        case 2 -> move();
        case 3 -> strike();
        case 4 -> price();
        case 5 -> plan();
        case 6 -> settle();
        case 7 -> replace();
        default -> decide();
      }
    }

    /** Nothing was logged, so there is nothing to take back. */
    private void nothing() {
      before.remove(before.size() - 1);
    }

    private void note() {
      CostState state = any(List.of(CostState.values()));
      BigDecimal amount = amount(900);
      int plan = till.open.isEmpty() || random.nextInt(3) > 0 ? 0 : any(till.openPlans());
      String what = any(WORDS);
      String about = any(ABOUT);
      assertThat(book.note(0, what, about, state, amount.toPlainString(), plan, "n," + lines))
          .isInstanceOf(MoneyBook.Answer.Kept.class);
      lines++;
      till.rows.put(lines, new Till.Row(what, about, state, amount, plan, "n," + (lines - 1)));
    }

    private void move() {
      if (till.rows.isEmpty()) {
        nothing();
        return;
      }
      int line = any(List.copyOf(till.rows.keySet()));
      CostState state = any(List.of(CostState.values()));
      assertThat(book.move(line, state)).isInstanceOf(MoneyBook.Answer.Kept.class);
      till.rows.computeIfPresent(line, (number, row) -> row.in(state));
    }

    private void strike() {
      if (till.rows.isEmpty()) {
        nothing();
        return;
      }
      int line = any(List.copyOf(till.rows.keySet()));
      book.drop(line, "");
      till.rows.remove(line);
    }

    private void price() {
      String what = any(PRICED);
      BigDecimal price = amount(60);
      book.setPrice(Article.read(what), price.toPlainString());
      till.prices.put(what, price);
    }

    private void plan() {
      Till.Job work = any(Till.JOBS);
      if (!till.offers(work)) {
        assertThat(planning.plan(Change.at(work.kind(), work.where())))
            .isInstanceOf(Planning.Answer.Refused.class);
        nothing();
        return;
      }
      assertThat(planning.plan(Change.at(work.kind(), work.where())))
          .isInstanceOf(Planning.Answer.Planned.class);
      plans++;
      till.open.put(plans, work);
    }

    private void settle() {
      if (till.open.isEmpty()) {
        nothing();
        return;
      }
      int plan = any(till.openPlans());
      if (random.nextBoolean()) {
        planning.drop(plan, "too dear");
        till.open.remove(plan);
        till.rows.values().removeIf(row -> row.plan() == plan);
      } else {
        planning.carryOut(plan);
        till.made.add(till.open.remove(plan));
      }
    }

    private void replace() {
      String place = any(Till.REPLACED);
      bench.replace(place);
      till.bought.merge(place, 1, Integer::sum);
      till.decided.remove(place);
    }

    private void decide() {
      String place = any(Till.PLACES);
      Decision decision = random.nextBoolean() ? Decision.REUSE : Decision.REPLACE;
      bench.decide(place, decision);
      till.decided.put(Place.find(place).orElseThrow().key(), decision);
    }

    void check() {
      Budget budget = book.budget();
      same(budget.limit(), limit);
      for (CostState state : CostState.values()) {
        if (state != CostState.AVOIDED) {
          same(of(budget, state), till.settled(state));
        }
      }
      same(budget.planned(), till.planned());
      same(budget.toBuy(), till.toBuy(List.of()));
      same(budget.avoided(), till.avoided());
      BigDecimal total = total(till.toBuy(List.of()));
      same(budget.total(), total);
      same(
          book.toBuy().stream()
              .map(CostItem::amount)
              .reduce(wherefrom.quantity.Money.ZERO, wherefrom.quantity.Money::plus),
          till.toBuy(List.of()));
      same(budget.left(), limit.subtract(total));
      assertThat(budget.sentence())
          .contains(total.setScale(coins).toPlainString() + " " + currency);
      Till.Job work = any(Till.JOBS);
      PlanCost effect = book.effect(Change.at(work.kind(), work.where()));
      same(effect.sum(), till.cost(work));
      same(effect.withIt().total(), total(till.toBuy(List.of(work))));
    }

    private BigDecimal total(BigDecimal toBuy) {
      BigDecimal all = till.planned().add(toBuy);
      for (CostState state : CostState.values()) {
        all = state == CostState.AVOIDED ? all : all.add(till.settled(state));
      }
      BigDecimal reserve =
          all.multiply(BigDecimal.valueOf(percent))
              .divide(BigDecimal.valueOf(100), coins, RoundingMode.HALF_UP);
      return all.add(reserve);
    }

    private static wherefrom.quantity.Money of(Budget budget, CostState state) {
      return switch (state) {
        case QUOTED -> budget.quoted();
        case COMMITTED -> budget.committed();
        default -> budget.paid();
      };
    }

    private void same(wherefrom.quantity.Money money, BigDecimal wanted) {
      assertThat(new BigDecimal(money.text())).as("%s", till).isEqualByComparingTo(wanted);
    }

    /** The table that goes out, read by a reader of its own, and by another job. */
    void goesOutAndIn() {
      String table = new MoneyCsv(bench.job).write();
      List<List<String>> rows = cells(table);
      assertThat(rows.get(0)).startsWith("what", "about", "state", "amount", "note");
      Map<CostState, BigDecimal> flat = new TreeMap<>();
      for (List<String> row : rows.subList(1, rows.size())) {
        CostState state = CostState.valueOf(row.get(2).toUpperCase(java.util.Locale.ROOT));
        flat.merge(state, new BigDecimal(row.get(3)), BigDecimal::add);
      }
      for (CostState state : CostState.values()) {
        assertThat(flat.getOrDefault(state, BigDecimal.ZERO))
            .isEqualByComparingTo(till.written(state));
      }
      BenchJob other = BenchJob.inline4();
      new MoneyBook(other.job).setBudget("1000", 10, currency);
      assertThat(new MoneyCsv(other.job).read(table)).isEmpty();
      assertThat(new MoneyCsv(other.job).write()).isEqualTo(table);
      assertThat(new MoneyBook(other.job).lines())
          .extracting(CostLine::what, CostLine::about, CostLine::state, CostLine::note)
          .containsExactlyElementsOf(
              till.rows.values().stream()
                  .map(
                      row ->
                          org.assertj.core.groups.Tuple.tuple(
                              Article.read(row.what()), row.about(), row.state(), row.note()))
                  .toList());
    }
  }

  private static final Pattern CELL = Pattern.compile("(\"(?:[^\"]|\"\")*\"|[^,\r]*)(,|\r\n)");

  private static List<List<String>> cells(String table) {
    List<List<String>> rows = new ArrayList<>();
    List<String> row = new ArrayList<>();
    Matcher cell = CELL.matcher(table);
    while (cell.find()) {
      String text = cell.group(1);
      row.add(
          text.startsWith("\"")
              ? text.substring(1, text.length() - 1).replace("\"\"", "\"")
              : text);
      if (!cell.group(2).equals(",")) {
        rows.add(row);
        row = new ArrayList<>();
      }
    }
    return rows;
  }

  /** With the decimals that amounts are typed with: a dinar's thousandths are not kept. */
  @ParameterizedTest
  @CsvSource({"JPY, 0", "EUR, 2", "USD, 1", "KWD, 2"})
  void aTillBesideTheBookHoldsTheSameMoney(String currency, int decimals) {
    int spent = 0;
    for (int at = 0; at < JOBS; at++) {
      Run run = new Run(20260400L + at, currency, decimals);
      for (int step = 0; step < STEPS; step++) {
        run.step();
      }
      run.check();
      run.goesOutAndIn();
      spent += run.till.toBuy(List.of()).signum();
    }
    assertThat(spent).as("jobs in which something is still to be bought").isGreaterThan(JOBS / 2);
  }
}
