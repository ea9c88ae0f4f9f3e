package wherefrom.job.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.job.BenchJob;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigParts;
import wherefrom.job.change.Planning;
import wherefrom.job.decide.Deciding;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.entry.CostState;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.entry.GoodsArrived;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.PartSort;
import wherefrom.job.handling.Handling;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.record.MoneyTable;
import wherefrom.parts.BigPartKind;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Money;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.size.ChangeText;
import wherefrom.rules.size.GoodsSize;

/** Every answer about money adds up one list: what at which place, each piece once. */
class OneCostListTest {
  private final BenchJob bench = BenchJob.v8();
  private final Planning planning = new Planning(bench.job);
  private final MoneyBook money = new MoneyBook(bench.job);

  private PlanCost effect(ChangeKind kind, String where) {
    return money.effect(Change.at(kind, where));
  }

  private List<String> lines(ChangeKind kind, String where) {
    return effect(kind, where).lines().stream()
        .map(item -> item.pieces() + " " + item.what().words())
        .toList();
  }

  private String toBuy() {
    return money.budget().toBuy().text();
  }

  @Test
  void milledHeadsCostTheSameBeforeTheyArePlannedPlannedAndDone() {
    money.setPrice(Article.read("head gaskets"), "46");
    money.setPrice(Article.read("head milled"), "115");
    assertThat(effect(ChangeKind.HEAD_MILLED, "left").sum()).isEqualTo(Money.ofCents(16100));
    List<Change> both =
        List.of(
            Change.at(ChangeKind.HEAD_MILLED, "left"), Change.at(ChangeKind.HEAD_MILLED, "right"));
    assertThat(money.effect(both).sum()).isEqualTo(Money.ofCents(32200));
    both.forEach(planning::plan);
    assertThat(toBuy()).isEqualTo("322.00");
    assertThat(money.effect(both).withIt().toBuy()).isEqualTo(Money.ofCents(32200));
    planning.carryOut(1);
    planning.carryOut(2);
    assertThat(toBuy()).isEqualTo("322.00");
    assertThat(money.effect(both).withIt().toBuy()).isEqualTo(Money.ofCents(32200));
  }

  /** The total is the job's: what it lacks a price for counts whatever is asked about. */
  @Test
  void theTotalWithAChangeIsTheLeastWhereTheJobBuysSomethingWithoutAPrice() {
    money.setBudget("100", 0, "USD");
    planning.plan(Change.at(ChangeKind.DECK_MILLED, "right"));
    effect(ChangeKind.HEAD_MILLED, "left")
        .lines()
        .forEach(item -> money.setPrice(item.what(), "46"));
    PlanCost cost = effect(ChangeKind.HEAD_MILLED, "left");
    assertThat(cost.atLeast()).isFalse();
    assertThat(cost.total()).startsWith("Total at least ");
    assertThat(cost.briefTotal()).startsWith("At least ");
    assertThat(money.budget().sentence()).startsWith("Total at least ");
  }

  @Test
  void whatIsPlannedAlreadyOrInACostLineAddsNothingAndSaysSo() {
    assertThat(effect(ChangeKind.HEAD_MILLED, "left").counted()).isEmpty();
    planning.plan(Change.at(ChangeKind.HEAD_MILLED, "left"));
    money.note(0, "head milled", "", CostState.QUOTED, "90", 0, "");
    PlanCost again = effect(ChangeKind.HEAD_MILLED, "left");
    assertThat(again.withIt()).isEqualTo(money.budget());
    assertThat(again.counted())
        .containsEntry(Article.read("head gaskets"), "already in the plan")
        .containsEntry(Article.read("head milled"), "already in the costs");
    PlanCost other = effect(ChangeKind.HEAD_MILLED, "right");
    assertThat(other.counted()).doesNotContainKey(Article.read("head gaskets"));
  }

  @Test
  void aHeadAndADeckMilledOnOneBankTakeOneGasketAndBothBanksTakeTwo() {
    planning.plan(Change.at(ChangeKind.HEAD_MILLED, "left"));
    planning.plan(Change.at(ChangeKind.DECK_MILLED, "left"));
    planning.plan(Change.of(ChangeKind.GASKET_THICKNESS));
    money.setPrice(Article.read("head gaskets"), "46");
    assertThat(toBuy()).isEqualTo("92.00");
  }

  /** A set that holds so many of a thing, and is here. */
  private void setHolds(String what, int pieces) {
    GasketSet.tick(bench.job, Article.read(what), pieces);
    bench.job.record(new GoodsArrived(GasketSet.WHAT, GoodsSize.none(), 1, "", true));
  }

  @Test
  void whatOneBankTakesOfTheGasketSetIsNotThereForTheOther() {
    setHolds("head gaskets", 1);
    assertThat(lines(ChangeKind.HEAD_MILLED, "right")).doesNotContain("1 head gaskets");
    planning.plan(Change.at(ChangeKind.HEAD_MILLED, "left"));
    planning.carryOut(1);
    assertThat(lines(ChangeKind.HEAD_MILLED, "right")).contains("1 head gaskets");
  }

  @Test
  void whatIsSureTakesOfTheGasketSetBeforeWhatMayBeWanted() {
    setHolds("screw-in rocker studs", 8);
    PlanCost cost =
        money.effect(
            List.of(
                Change.of(ChangeKind.LIFT_INCREASED),
                Change.at(ChangeKind.STUDS_SCREW_IN, "right")));
    assertThat(cost.lines())
        .noneMatch(item -> item.what().equals(Article.read("screw-in rocker studs")));
    assertThat(cost.perhaps())
        .filteredOn(item -> item.what().equals(Article.read("screw-in rocker studs")))
        .extracting(CostItem::pieces)
        .containsExactly(8);
  }

  @Test
  void aPlanForANewFlatCamAddsSixteenLiftersAndACam() {
    assertThat(lines(ChangeKind.NEW_FLAT_CAM, "")).containsExactly("16 lifters", "1 cam");
    assertThat(lines(ChangeKind.CAM_REGROUND, "")).containsExactly("16 lifters", "1 cam reground");
    assertThat(lines(ChangeKind.NEW_ROLLER_CAM, ""))
        .contains("16 roller lifters", "16 pushrods", "1 roller cam");
  }

  @Test
  void aValveJobOnOneBankAddsSealsForThatBanksValvesOnly() {
    assertThat(lines(ChangeKind.VALVE_JOB, "left"))
        .containsExactly("1 valve job: seats or faces ground", "8 valve stem seals");
  }

  @Test
  void eachChangeAddsItsOwnParts() {
    assertThat(lines(ChangeKind.GASKET_THICKNESS, "")).containsExactly("2 head gaskets");
    assertThat(lines(ChangeKind.HONED, "B3")).containsExactly("1 honed only", "1 piston ring sets");
    assertThat(lines(ChangeKind.LARGER_INTAKE_VALVES, "left"))
        .containsExactlyInAnyOrder(
            "4 valves", "4 valve stem seals", "4 seats and throats cut for larger valves");
    assertThat(lines(ChangeKind.STUDS_SCREW_IN, "right"))
        .containsExactly("8 screw-in rocker studs", "1 head machined for screw-in studs");
    assertThat(lines(ChangeKind.ROCKER_RATIO, "")).containsExactly("16 rockers", "16 pivots");
    assertThat(lines(ChangeKind.ROCKER_REPLACED, "3EX")).containsExactly("1 rockers", "1 pivots");
    assertThat(lines(ChangeKind.ROD_REPLACED, "R3")).containsExactly("1 rods", "2 rod shells");
  }

  @Test
  void aCapIsNotSoldAloneTheRodComesWithIt() {
    assertThat(lines(ChangeKind.CAP_LOST, "R3"))
        .containsExactlyInAnyOrder("1 rods", "2 rod shells");
    assertThat(lines(ChangeKind.CAP_LOST, "M2"))
        .containsExactlyInAnyOrder(
            "1 main caps", "2 main shells", "1 main housing machined for another cap");
    money.setPrice(Article.read("rods"), "60");
    bench.decide("rod-cap@R3L", Decision.REPLACE);
    assertThat(toBuy()).isEqualTo("60.00");
    bench.decide("rod@R3U", Decision.REPLACE);
    assertThat(toBuy()).isEqualTo("60.00");
  }

  @Test
  void perhapsNamesAThingOnceAndNothingThatIsBoughtAnyway() {
    PlanCost cost = effect(ChangeKind.ROCKER_RATIO, "");
    assertThat(cost.perhaps()).extracting(CostItem::what).doesNotHaveDuplicates();
    assertThat(cost.perhaps())
        .extracting(item -> item.pieces() + " " + item.what().words())
        .containsExactlyInAnyOrder("16 pushrods", "16 valve springs", "16 screw-in rocker studs");
  }

  @Test
  void oneFailedHoneAndABoredBlockTakeTheLargerRingsAlone() {
    money.setPrice(Article.read("piston ring sets"), "10");
    money.setPrice(Article.read("piston ring sets, oversize"), "20");
    planning.plan(Change.at(ChangeKind.HONED, "B3"));
    assertThat(toBuy()).isEqualTo("10.00");
    planning.plan(Change.at(ChangeKind.BORED, "B5"));
    assertThat(toBuy()).isEqualTo("160.00");
  }

  @Test
  void standardShellsBoughtBeforeTheCrankIsGroundAreBoughtAgainUndersize() {
    money.setPrice(Article.read("rod shells"), "3");
    bench.replace("rod-shell@R3U");
    assertThat(toBuy()).isEqualTo("3.00");
    Change ground =
        ChangeText.read(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in undersize", Unit.INCH);
    assertThat(money.effect(ground).withIt().toBuy()).isEqualTo(Money.ofCents(17 * 300));
  }

  @Test
  void shellsBoughtAtTheSizeThatIsPlannedServe() {
    money.setPrice(Article.read("rod shells"), "3");
    bench.record(
        new PartReplaced(
            bench.item("rod-shell@R3U"),
            bench.job.nextItem(),
            "worn",
            Optional.of(Amount.of("0.010", Unit.INCH)),
            PartSort.SAME));
    Change ground =
        ChangeText.read(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in undersize", Unit.INCH);
    assertThat(money.effect(ground).withIt().toBuy()).isEqualTo(Money.ofCents(16 * 300));
    Change deeper =
        ChangeText.read(ChangeKind.ROD_JOURNALS_GROUND, "", "0.020 in undersize", Unit.INCH);
    assertThat(money.effect(deeper).withIt().toBuy()).isEqualTo(Money.ofCents(17 * 300));
  }

  /** Ten thousandths are no hundredth of a millimeter; a comma is a point. */
  @Test
  void aSizeIsTheSameInOneUnitOnly() {
    money.setPrice(Article.read("rod shells"), "3");
    bench.record(
        new PartReplaced(
            bench.item("rod-shell@R3U"),
            bench.job.nextItem(),
            "worn",
            Optional.of(Amount.of("0.010", Unit.MILLIMETRE)),
            PartSort.SAME));
    Change inch = ChangeText.read(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in", Unit.INCH);
    assertThat(money.effect(inch).withIt().toBuy()).isEqualTo(Money.ofCents(17 * 300));
    Change metric = ChangeText.read(ChangeKind.ROD_JOURNALS_GROUND, "", "0,01 mm", Unit.INCH);
    assertThat(money.effect(metric).withIt().toBuy()).isEqualTo(Money.ofCents(16 * 300));
  }

  /** What wears serves a coming change only while it has not run. */
  @Test
  void aLifterThatRanServesNoNewCam() {
    money.setPrice(Article.read("lifters"), "10");
    bench.replace("lifter@3EX");
    bench.record(new PartFitted(bench.item("lifter@3EX"), bench.part("lifter@3EX").home()));
    assertThat(effect(ChangeKind.NEW_FLAT_CAM, "").withIt().toBuy())
        .isEqualTo(Money.ofCents(17 * 1000));
  }

  @Test
  void aThingWithoutATagCostsItsPriceForEachPiece() {
    bench.record(new ChangeMade(0, Change.at(ChangeKind.GASKET_THICKNESS, "")));
    Purchase gaskets =
        new Deciding(bench.job)
            .purchases().stream()
                .filter(thing -> thing.what().id().equals("head gaskets"))
                .findFirst()
                .orElseThrow();
    assertThat(gaskets.pieces()).isEqualTo(2);
    assertThat(new Deciding(bench.job).findCost(gaskets)).isEmpty();
    money.setPrice(Article.read("head gaskets"), "46");
    assertThat(new Deciding(bench.job).findCost(gaskets)).contains(Money.ofCents(9200));
  }

  /** One head is milled and asks for its gasket; both heads are off. */
  @Test
  void bothHeadsThatAreOffWantAGasketThoughARuleAsksForOne() {
    bench.record(new ChangeMade(0, Change.at(ChangeKind.HEAD_MILLED, "left")));
    BigParts parts = new BigParts(bench.job);
    parts.nameUsual();
    BagBook.of(bench.job.state()).bigParts().stream()
        .filter(part -> part.part().name().kind() == BigPartKind.HEAD)
        .forEach(head -> parts.off(head.number(), "all are off"));
    assertThat(gaskets()).isEqualTo(1);
    parts.listGaskets(true);
    assertThat(gaskets()).isEqualTo(2);
  }

  private int gaskets() {
    return new PurchaseList(bench.job.state())
        .lines().stream()
            .filter(thing -> thing.what().id().equals("head gaskets"))
            .mapToInt(Purchase::pieces)
            .sum();
  }

  @Test
  void aLifterThatWasBoughtAndNeverRanServesTheNewCam() {
    money.setPrice(Article.read("lifters"), "10");
    bench.replace("lifter@3EX");
    assertThat(effect(ChangeKind.NEW_FLAT_CAM, "").withIt().toBuy())
        .isEqualTo(Money.ofCents(16 * 1000));
    assertThat(effect(ChangeKind.FLAT_TO_ROLLER, "").withIt().toBuy())
        .isEqualTo(Money.ofCents(1000));
  }

  @Test
  void aPartThatWasReplacedSavesNothingByAnEarlierDecisionToReuseIt() {
    money.setPrice(Article.read("lifters"), "10");
    bench.decide("lifter@3EX", Decision.REUSE);
    assertThat(money.budget().avoided()).isEqualTo(Money.ofCents(1000));
    bench.replace("lifter@3EX");
    assertThat(money.budget().avoided()).isEqualTo(Money.ZERO);
  }

  @Test
  void aFailedLobeAndThePlannedCamAreOneCamAndALobeThatFailsLaterIsAnother() {
    money.setPrice(Article.read("cam"), "200");
    bench.record(new FeatureLooked("lobe@3EX", "lobe-look", Look.FAIL, "pitted"));
    assertThat(toBuy()).isEqualTo("200.00");
    planning.plan(Change.of(ChangeKind.NEW_FLAT_CAM));
    assertThat(toBuy()).isEqualTo("200.00");
    planning.carryOut(1);
    assertThat(toBuy()).isEqualTo("200.00");
    bench.record(new FeatureLooked("lobe@5EX", "lobe-look", Look.FAIL, "wiped at break-in"));
    assertThat(toBuy()).isEqualTo("400.00");
  }

  @Test
  void doubleSpringsOnOneTagAreTwoPieces() {
    money.setPrice(Article.read("valve springs"), "4");
    new Handling(bench.job).pieces(bench.item("spring@3EX"), 2);
    assertThat(effect(ChangeKind.SPRINGS_CHANGED, "").sum()).isEqualTo(Money.ofCents(17 * 400));
    planning.make(Change.of(ChangeKind.SPRINGS_CHANGED));
    assertThat(toBuy()).isEqualTo("68.00");
  }

  @Test
  void workLeavesTheListOnceALineSpeaksOfItByItsNameOrOnOneBill() {
    money.setPrice(Article.read("bored"), "30");
    money.setPrice(Article.read("head milled"), "115");
    planning.make(Change.at(ChangeKind.BORED, "B3"));
    planning.make(Change.at(ChangeKind.HEAD_MILLED, "left"));
    assertThat(toBuy()).isEqualTo("355.00");
    money.note(0, "Head milled", "", CostState.PAID, "100", 0, "");
    assertThat(toBuy()).isEqualTo("240.00");
    money.note(0, "bored and honed", "", CostState.QUOTED, "220", 0, "");
    assertThat(toBuy()).isEqualTo("0.00");
  }

  @Test
  void whatIsOnTheBuyingListAndInTheBudgetIsTheSame() {
    List.of("lifters", "cam", "gasket set", "pushrods", "roller lifters", "roller cam")
        .forEach(what -> money.setPrice(Article.read(what), "10"));
    planning.make(Change.of(ChangeKind.FLAT_TO_ROLLER));
    bench.decide("rocker@3EX", Decision.REPLACE);
    Deciding deciding = new Deciding(bench.job);
    long listed =
        deciding.replacements().stream()
                .mapToLong(line -> deciding.findCost(line).orElse(Money.ZERO).cents())
                .sum()
            + deciding.purchases().stream()
                .mapToLong(thing -> deciding.findCost(thing).orElse(Money.ZERO).cents())
                .sum();
    // 16 roller lifters, 16 pushrods, a roller cam, a gasket set; the rocker has no price.
    assertThat(listed).isEqualTo(34_000);
    assertThat(money.budget().toBuy()).isEqualTo(Money.ofCents(listed));
    assertThat(MoneyTable.of(bench.job).rows())
        .extracting(row -> row.cells().get(0))
        .contains("16 × roller lifters", "1 × roller cam", "16 × pushrods", "1 × gasket set");
    // What has no price is named, and the total beside it is only the least.
    assertThat(MoneyTable.of(bench.job).rows())
        .extracting(RecordSection.Row::cells)
        .anySatisfy(cells -> assertThat(cells.get(3)).startsWith("1 × rockers; 1 × seals"))
        .anySatisfy(cells -> assertThat(cells.get(3)).startsWith("Total at least "));
  }

  @Test
  void untrackedPartsStayOnTheListOnceTheWorkIsDone() {
    BenchJob few = BenchJob.fewKinds();
    MoneyBook book = new MoneyBook(few.job);
    book.setPrice(Article.read("cam bearings"), "7");
    Planning plans = new Planning(few.job);
    plans.plan(Change.of(ChangeKind.HOT_TANKED));
    assertThat(book.budget().toBuy()).isEqualTo(Money.ofCents(3500));
    plans.carryOut(1);
    assertThat(book.budget().toBuy()).isEqualTo(Money.ofCents(3500));
    assertThat(new Deciding(few.job).purchases())
        .extracting(thing -> thing.pieces() + " " + thing.what().words())
        .contains("5 cam bearings");
  }
}
