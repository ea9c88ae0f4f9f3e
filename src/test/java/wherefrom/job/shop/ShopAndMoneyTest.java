package wherefrom.job.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.inspection.match.PartMatch;
import wherefrom.job.BenchJob;
import wherefrom.job.LoggedEntry;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.CostDropped;
import wherefrom.job.entry.CostNoted;
import wherefrom.job.entry.CostState;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.job.money.CostLine;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.money.MoneyCsv;
import wherefrom.job.money.PlanCost;
import wherefrom.parts.PartKind;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Money;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;

class ShopAndMoneyTest {
  private final BenchJob bench = BenchJob.v8();
  private final MachineShop shop = new MachineShop(bench.job);
  private final MoneyBook money = new MoneyBook(bench.job);

  private ShopVisit visit(int number) {
    return shop.findVisit(number).orElseThrow();
  }

  @Test
  void aVisitCountsItsPiecesAndSaysWhatMustNotGetLost() {
    shop.send(1, List.of(bench.item("valve@3EX"), bench.item("valve@3IN")), "grind faces 45°");
    shop.add(1, "block", 1, "bore all eight", "3.8900", "0.0005", false);
    shop.add(1, "main caps", 5, "stay with the block", "", "", true);
    assertThat(visit(1).pieces()).isEqualTo(8);
    assertThat(visit(1).missing()).isEqualTo(8);
    assertThat(visit(1).doNotLose())
        .containsExactly("cylinder 3, exhaust, valve", "cylinder 3, intake, valve", "5 main caps");
    assertThat(bench.word("valve@3EX")).isEqualTo("not cleared");
    assertThat(shop.nextVisit()).isEqualTo(2);
  }

  @Test
  void partsAreCheckedInByScanByCountAndByValue() {
    bench.decide("valve@3EX", Decision.MACHINE);
    shop.send(1, List.of(bench.item("valve@3EX")), "grind");
    shop.add(1, "block", 1, "bore all eight", "3.8900", "0.0005", false);
    shop.add(1, "main caps", 5, "stay with the block", "", "", true);
    shop.backByScan(bench.item("valve@3EX"), "ground");
    assertThat(bench.job.state().bench().findDecision(bench.item("valve@3EX"))).isEmpty();
    shop.backByCount(1, 2, 4, "", "");
    assertThat(visit(1).lines().get(1).missing()).isEqualTo(1);
    assertThat(shop.backByCount(1, 2, 2, "", ""))
        .isEqualTo(
            new MachineShop.Answer.Refused(
                "Only 1 main caps are still at the shop; you counted 2. Count again."));
    MachineShop.Answer wrong = shop.backByCount(1, 1, 1, "3.8915", "");
    assertThat(((MachineShop.Answer.Done) wrong).sentence()).contains("NOT within");
    assertThat(((MachineShop.Answer.Done) wrong).good()).isFalse();
    assertThat(visit(1).missing()).isEqualTo(1);
  }

  @Test
  void aMillimetreFigureForAnInchSizeIsNoticed() {
    shop.add(1, "block", 1, "bore", "3.8900", "0.0005", false);
    MachineShop.Answer answer = shop.backByCount(1, 1, 1, "102.108 in", "");
    assertThat(((MachineShop.Answer.Refused) answer).sentence())
        .contains("mixed up")
        .contains("Nothing is counted");
    assertThat(visit(1).missing()).isEqualTo(1);
  }

  @Test
  void untaggedPushrodsAreToldByTheirLengthAndOnlyWhenThePersonAgrees() {
    new Instruments(bench.job).list("caliper", Dimension.LENGTH, "0.0005", "0.001", "0.0005");
    String[] places = {"1IN", "1EX", "2IN", "2EX"};
    String[] lengths = {"7.9000", "7.9200", "7.9400", "7.9400"};
    List<Integer> items = new java.util.ArrayList<>();
    for (int at = 0; at < 4; at++) {
      int item = bench.item("pushrod@" + places[at]);
      items.add(item);
      new Measuring(bench.job)
          .take(
              new Measuring.Entry(
                  Subject.ofPart(item),
                  "pushrod-length",
                  "caliper",
                  Map.of("length", List.of(lengths[at])),
                  false,
                  ""));
      bench.record(new OffForWashing(item, 1));
    }
    Retagging retagging = new Retagging(bench.job);
    assertThat(retagging.candidates(PartKind.PUSHROD, "pushrod-length")).hasSize(4);
    Map<String, String> found = new LinkedHashMap<>();
    found.put("A", "7.9205");
    found.put("B", "7.9395");
    found.put("C", "7.9000");
    found.put("D", "7.9405");
    Retagging.Answer answer = retagging.propose(items, "pushrod-length", "caliper", found);
    List<PartMatch> matches = ((Retagging.Answer.Proposed) answer).matches();
    assertThat(matches.get(0).best()).isEqualTo(Integer.toString(items.get(1)));
    assertThat(matches)
        .extracting(PartMatch::certainty)
        .containsExactly(
            PartMatch.Certainty.CERTAIN,
            PartMatch.Certainty.CANNOT_TELL,
            PartMatch.Certainty.CERTAIN,
            PartMatch.Certainty.CANNOT_TELL);
    assertThat(bench.job.state().whereabouts(items.get(1))).isEqualTo(Whereabouts.WASHING);
    retagging.accept(matches.get(0), items.get(1));
    assertThat(bench.job.state().whereabouts(items.get(1))).isEqualTo(Whereabouts.OUT);
    assertThat(retagging.accept(matches.get(1), items.get(1)))
        .as("two pieces cannot be one part")
        .isEqualTo(
            new Retagging.Answer.Refused("It was accepted as number A already. Undo that first."));
    bench.record(new LookRecorded(items.get(1), "pushrod-tip", Look.PASS, ""));
    assertThat(retagging.accept(matches.get(1), items.get(1)))
        .as("nor when one of them was looked at since")
        .isInstanceOf(Retagging.Answer.Refused.class);
    bench.job.undo();
    bench.job.undo();
    assertThat(retagging.accept(matches.get(1), items.get(1)))
        .isInstanceOf(Retagging.Answer.Accepted.class);
  }

  @Test
  void aNewCamDragsLiftersAlongAndPassesTheBudget() {
    money.setBudget("500", 20, "EUR");
    money.setPrice(Article.read("lifters"), "12.50");
    money.setPrice(Article.read("cam"), "0");
    money.note(0, "teardown consumables", "", CostState.PAID, "100", 0, "");
    PlanCost effect = money.effect(Change.of(ChangeKind.NEW_FLAT_CAM));
    assertThat(effect.sum()).isEqualTo(Money.ofCents(16 * 1250));
    // (100 + 200) · 1.2 = 360.00 of 500.
    assertThat(effect.sentence())
        .isEqualTo(
            "+16 lifters, +1 cam. If a check fails: 16 valve springs (no price typed), 16 pushrods"
                + " (no price typed), 16 screw-in rocker studs (no price typed). Total at least"
                + " 360.00 EUR; at most 140.00 EUR left.");
    money.note(0, "boring", "", CostState.QUOTED, "150.01", 0, "");
    // (100 + 150.01 + 200) · 1.2 = 540.012, in cents 540.01.
    assertThat(money.effect(Change.of(ChangeKind.NEW_FLAT_CAM)).sentence())
        .endsWith("Total at least 540.01 EUR is over the budget by at least 40.01 EUR.");
  }

  @Test
  void aThingWithoutAPriceSaysSo() {
    assertThat(money.effect(Change.of(ChangeKind.HOT_TANKED)).sentence())
        .contains("+1 core plugs and gallery plugs. No prices typed.");
  }

  @Test
  void costsOfADroppedPlanAreGone() {
    new Planning(bench.job).plan(Change.of(ChangeKind.NEW_FLAT_CAM));
    money.note(0, "cam kit", "", CostState.QUOTED, "300", 1, "");
    assertThat(money.budget().planned()).isEqualTo(Money.ofCents(30000));
    assertThat(money.budget().costs()).isEqualTo(Money.ZERO);
    new Planning(bench.job).drop(1, "too dear");
    assertThat(money.lines()).isEmpty();
    assertThat(money.budget().total()).isEqualTo(Money.ZERO);
  }

  @Test
  void costsOfAPlanThatIsCarriedOutCount() {
    new Planning(bench.job).plan(Change.of(ChangeKind.NEW_FLAT_CAM));
    money.note(0, "cam kit", "", CostState.QUOTED, "300", 1, "");
    new Planning(bench.job).carryOut(1);
    assertThat(money.budget().costs()).isEqualTo(Money.ofCents(30000));
    assertThat(money.move(1, CostState.PAID)).isInstanceOf(MoneyBook.Answer.Kept.class);
    assertThat(money.budget().paid()).isEqualTo(Money.ofCents(30000));
  }

  @Test
  void whatEveryRebuildTakesNewIsReckonedWithFromItsPriceOn() {
    money.setPrice(Article.read("gasket set"), "80");
    assertThat(money.budget().toBuy()).isEqualTo(Money.ofCents(8000));
    money.note(0, "gasket set", "", CostState.PAID, "75", 0, "");
    assertThat(money.budget().toBuy()).isEqualTo(Money.ZERO);
  }

  @Test
  void aPartThatMustBeNewSavesNothing() {
    money.setPrice(Article.read("lifters"), "12.50");
    bench.decide("lifter@3EX", Decision.REUSE);
    assertThat(money.budget().avoided()).isEqualTo(Money.ofCents(1250));
    new Planning(bench.job).make(Change.of(ChangeKind.NEW_FLAT_CAM));
    assertThat(money.budget().avoided()).isEqualTo(Money.ZERO);
    assertThat(money.budget().toBuy()).isEqualTo(Money.ofCents(16 * 1250));
  }

  /** A second tally, in decimals and straight from the entries, of 300 random books. */
  @Test
  void anIndependentTallyGivesTheSameSums() {
    Random random = new Random(20260106);
    for (int round = 0; round < 300; round++) {
      BenchJob job = BenchJob.inline4();
      MoneyBook book = new MoneyBook(job.job);
      int percent = random.nextInt(31);
      book.setBudget(Integer.toString(random.nextInt(5000)), percent, "EUR");
      for (int step = 0; step < 25; step++) {
        List<CostLine> lines = book.lines();
        int choice = random.nextInt(6);
        CostState state = CostState.values()[random.nextInt(4)];
        if (choice == 0 && !lines.isEmpty()) {
          book.drop(lines.get(random.nextInt(lines.size())).number(), "");
        } else if (choice == 1 && !lines.isEmpty()) {
          book.move(lines.get(random.nextInt(lines.size())).number(), state);
        } else if (choice == 2) {
          job.job.undo();
        } else {
          String amount = random.nextInt(900) + "." + (10 + random.nextInt(90));
          book.note(0, "line", "", state, amount, 0, "");
        }
      }
      Map<CostState, BigDecimal> tally = tally(job);
      assertThat(book.budget().quoted().text()).isEqualTo(text(tally, CostState.QUOTED));
      assertThat(book.budget().committed().text()).isEqualTo(text(tally, CostState.COMMITTED));
      assertThat(book.budget().paid().text()).isEqualTo(text(tally, CostState.PAID));
      assertThat(book.budget().avoided().text()).isEqualTo(text(tally, CostState.AVOIDED));
      BigDecimal costs =
          tally
              .getOrDefault(CostState.QUOTED, BigDecimal.ZERO)
              .add(tally.getOrDefault(CostState.COMMITTED, BigDecimal.ZERO))
              .add(tally.getOrDefault(CostState.PAID, BigDecimal.ZERO));
      int kept = book.budget().contingencyPercent();
      BigDecimal reserve =
          costs.multiply(BigDecimal.valueOf(kept, 2)).setScale(2, RoundingMode.HALF_UP);
      assertThat(new BigDecimal(book.budget().total().text()))
          .isEqualByComparingTo(costs.add(reserve));
    }
  }

  private static Map<CostState, BigDecimal> tally(BenchJob job) {
    Map<Integer, CostNoted> last = new LinkedHashMap<>();
    for (LoggedEntry logged : job.job.state().standing()) {
      if (logged.entry() instanceof CostNoted cost) {
        last.put(cost.line(), cost);
      } else if (logged.entry() instanceof CostDropped dropped) {
        last.remove(dropped.line());
      }
    }
    Map<CostState, BigDecimal> sums = new LinkedHashMap<>();
    last.values()
        .forEach(
            cost -> sums.merge(cost.state(), BigDecimal.valueOf(cost.cents(), 2), BigDecimal::add));
    return sums;
  }

  private static String text(Map<CostState, BigDecimal> tally, CostState state) {
    return tally.getOrDefault(state, BigDecimal.ZERO).setScale(2).toPlainString();
  }

  @Test
  void costLinesGoOutAsATableAndComeInAgain() {
    money.note(0, "boring, \"all eight\"", "bore@B1", CostState.QUOTED, "150.01", 0, "by phone\n");
    money.note(0, "gaskets", "", CostState.PAID, "80", 0, "");
    String table = new MoneyCsv(bench.job).write();
    BenchJob other = BenchJob.v8();
    assertThat(new MoneyCsv(other.job).read(table)).isEmpty();
    assertThat(new MoneyBook(other.job).lines()).isEqualTo(money.lines());
  }

  @Test
  void aTableWithAWrongRowAddsNothingAndNamesTheRow() {
    String table = "what,about,state,amount,note\r\ngood,,paid,1,\r\nbad,,paid,one,\r\n";
    assertThat(new MoneyCsv(bench.job).read(table).orElseThrow()).startsWith("Row 3 is wrong");
    assertThat(money.lines()).isEmpty();
  }

  @Test
  void whatIsNoAmountAndNoCurrencyIsRefused() {
    assertThat(money.note(0, "x", "", CostState.PAID, "1,250.00", 0, ""))
        .isInstanceOf(MoneyBook.Answer.Refused.class);
    assertThat(money.setBudget("100", 15, "Euro")).isInstanceOf(MoneyBook.Answer.Refused.class);
  }
}
