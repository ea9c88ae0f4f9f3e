package wherefrom.job.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Subject;
import wherefrom.job.BenchJob;
import wherefrom.job.MadeChanges;
import wherefrom.job.OpenJob;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.Bags;
import wherefrom.job.bags.BigParts;
import wherefrom.job.entry.AtAssembly;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.entry.BigPartMoved;
import wherefrom.job.entry.ShopLineAdded;
import wherefrom.parts.TagType;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.ShopWork;

/** A bag or a big part is away with its line of the slip, and back with it. */
class BesideAtShopTest {
  private static final Subject.Beside HEAD = new Subject.Beside(TagType.BIG_PART, 10);
  private static final Subject.Beside BAG = new Subject.Beside(TagType.BAG, 1);

  private final OpenJob job = BenchJob.v8().job;
  private final BesideAtShop away = new BesideAtShop(job);

  @BeforeEach
  void off() {
    new BigParts(job).nameUsual();
    new BigParts(job).off(10, "for the test");
    new Bags(job)
        .fill(new BagFilled(1, "rod bolts", 0, "", 16, List.of(), "", AtAssembly.NOT_SAID));
  }

  private static ShopOrder wanted(ShopWork work, String words) {
    return new ShopOrder(work, List.of(), "", 1, words, "", "", true);
  }

  private Whereabouts head() {
    return BagBook.of(job.state()).findBigPart(10).orElseThrow().where();
  }

  private Whereabouts bag() {
    return BagBook.of(job.state()).findBag(1).orElseThrow().where();
  }

  @Test
  void aHeadGoesForWorkOnItsOwnBankAndComesBackByItsScan() {
    away.send(1, HEAD, wanted(ShopWork.VALVES, ""));
    assertThat(head()).isEqualTo(Whereabouts.AT_SHOP);
    ShopVisit.Line line = new MachineShop(job).findVisit(1).orElseThrow().lines().get(0);
    assertThat(line.line().what()).isEqualTo("left head");
    assertThat(line.line().where()).containsExactly("left");
    assertThat(line.line().wanted()).isEqualTo("valve work");
    assertThat(away.back(HEAD)).isInstanceOf(MachineShop.Answer.Done.class);
    assertThat(head()).isEqualTo(Whereabouts.OUT);
    assertThat(new MachineShop(job).findVisit(1).orElseThrow().missing()).isZero();
    job.undo();
    assertThat(head()).as("one step back").isEqualTo(Whereabouts.AT_SHOP);
    assertThat(new MachineShop(job).findVisit(1).orElseThrow().missing()).isEqualTo(1);
  }

  /** What a thing is called may change; the line goes on being of it. */
  @Test
  void aLineIsOfItsBigPartWhateverItIsCalledThere() {
    away.send(1, HEAD, wanted(ShopWork.VALVES, ""));
    job.record(line(2, "the head on the driver's side", Optional.of(HEAD)));
    job.record(line(3, "left head, casting A", Optional.of(HEAD)));
    assertThat(visit().pieces()).as("one head").isEqualTo(1);
    assertThat(away.back(HEAD)).isInstanceOf(MachineShop.Answer.Done.class);
    assertThat(visit().missing()).isZero();
    assertThat(head()).isEqualTo(Whereabouts.OUT);
  }

  /** As it stands in logbooks of before the line kept what it is of. */
  @Test
  void aLineOfBeforeIsOfWhatItNames() {
    job.record(new BigPartMoved(10, Whereabouts.AT_SHOP, ""));
    job.record(line(1, "left head", Optional.empty()));
    assertThat(away.isOnSlip(HEAD)).isTrue();
    assertThat(away.back(HEAD)).isInstanceOf(MachineShop.Answer.Done.class);
    assertThat(head()).isEqualTo(Whereabouts.OUT);
  }

  private ShopVisit visit() {
    return new MachineShop(job).findVisit(1).orElseThrow();
  }

  private static ShopLineAdded line(int line, String what, Optional<Subject.Beside> beside) {
    return new ShopLineAdded(
        1,
        line,
        what,
        1,
        "valve work",
        Optional.empty(),
        Optional.empty(),
        true,
        ShopWork.VALVES,
        List.of("left"),
        beside);
  }

  private List<ShopVisit.Line> lines(int visit) {
    return new MachineShop(job).findVisit(visit).orElseThrow().lines();
  }

  /** One head, one visit, several works: a line of the slip for each, and one piece. */
  @Test
  void aHeadGoesForSeveralWorksOnOneVisit() {
    int before = job.history().size();
    away.send(
        MachineShop.NEW_VISIT,
        HEAD,
        List.of(
            wanted(ShopWork.MILL_HEAD, ""),
            wanted(ShopWork.VALVES, ""),
            wanted(ShopWork.OTHER, "fit new guides")));
    assertThat(job.history()).as("one act").hasSize(before + 4);
    assertThat(job.history().stream().skip(before).map(one -> one.sequence()).distinct())
        .hasSize(1);
    assertThat(lines(1))
        .extracting(line -> line.line().wanted())
        .containsExactly("mill a head", "valve work", "fit new guides");
    ShopVisit visit = new MachineShop(job).findVisit(1).orElseThrow();
    assertThat(visit.pieces()).isEqualTo(1);
    assertThat(visit.missing()).isEqualTo(1);
    assertThat(visit.doNotLose()).containsExactly("1 left head");
    assertThat(away.back(HEAD)).isInstanceOf(MachineShop.Answer.Done.class);
    assertThat(head()).isEqualTo(Whereabouts.OUT);
    assertThat(new MachineShop(job).findVisit(1).orElseThrow().missing()).isZero();
    assertThat(atShop()).containsExactly(ChangeKind.HEAD_MILLED);
  }

  @Test
  void moreWorkGoesOntoTheSlipThatItIsOn() {
    away.send(3, HEAD, wanted(ShopWork.VALVES, ""));
    assertThat(away.send(MachineShop.NEW_VISIT, HEAD, wanted(ShopWork.CRACK_TEST, "")))
        .isInstanceOf(MachineShop.Answer.Done.class);
    assertThat(lines(3)).hasSize(2);
    assertThat(away.send(3, HEAD, wanted(ShopWork.CRACK_TEST, "")))
        .isInstanceOfSatisfying(
            MachineShop.Answer.Refused.class,
            no -> assertThat(no.sentence()).contains("on the slip for that already"));
    assertThat(away.send(4, HEAD, wanted(ShopWork.STUD, "")))
        .isInstanceOfSatisfying(
            MachineShop.Answer.Refused.class,
            no -> assertThat(no.sentence()).contains("on the slip of visit 3"));
    away.backByCount(3, 1, 1, "", "");
    assertThat(head()).as("its other work is not counted back").isEqualTo(Whereabouts.AT_SHOP);
    away.backByCount(3, 2, 1, "", "");
    assertThat(head()).isEqualTo(Whereabouts.OUT);
  }

  @Test
  void whereOneWorkCannotBeWrittenNoneIs() {
    int before = job.history().size();
    assertThat(away.send(1, HEAD, List.of(wanted(ShopWork.VALVES, ""), wanted(ShopWork.OTHER, ""))))
        .isInstanceOf(MachineShop.Answer.Refused.class);
    assertThat(job.history()).hasSize(before);
    assertThat(head()).isEqualTo(Whereabouts.OUT);
  }

  @Test
  void allOfABagGoesAndLiesHereAgainWhenTheLastPieceIsCounted() {
    away.send(2, BAG, wanted(ShopWork.OTHER, "check the threads"));
    assertThat(new MachineShop(job).findVisit(2).orElseThrow().pieces()).isEqualTo(16);
    away.backByCount(2, 1, 15, "", "");
    assertThat(bag()).isEqualTo(Whereabouts.AT_SHOP);
    away.backByCount(2, 1, 1, "", "");
    assertThat(bag()).isEqualTo(Whereabouts.OUT);
  }

  /** The bolts go along with their rods; what makes caps and rods pairs is done on those. */
  @Test
  void aBagOrAnotherBigPartBringsNoChangeBack() {
    Subject.Beside cover = new Subject.Beside(TagType.BIG_PART, 8);
    new BigParts(job).off(8, "for the test");
    assertThat(away.send(1, BAG, wanted(ShopWork.RESIZE, "")))
        .isInstanceOf(MachineShop.Answer.Done.class);
    assertThat(away.send(1, cover, wanted(ShopWork.MILL_HEAD, "")))
        .isInstanceOf(MachineShop.Answer.Done.class);
    assertThat(new MachineShop(job).findVisit(1).orElseThrow().lines())
        .extracting(line -> line.line().wanted())
        .containsExactly("resize rods", "mill a head");
    away.back(BAG);
    away.back(cover);
    assertThat(bag()).isEqualTo(Whereabouts.OUT);
    assertThat(atShop()).isEmpty();
    away.send(2, HEAD, wanted(ShopWork.MILL_HEAD, ""));
    away.back(HEAD);
    assertThat(atShop()).containsExactly(ChangeKind.HEAD_MILLED);
  }

  private List<ChangeKind> atShop() {
    return MadeChanges.of(job.state()).stream()
        .map(made -> made.change().kind())
        .filter(kind -> kind == ChangeKind.ROD_RESIZED || kind == ChangeKind.HEAD_MILLED)
        .toList();
  }

  @Test
  void whatIsOnTheEngineOrOnNoSlipIsRefusedAndNothingIsWritten() {
    long before = job.sequence();
    Subject.Beside other = new Subject.Beside(TagType.BIG_PART, 11);
    assertThat(away.send(1, other, wanted(ShopWork.VALVES, "")))
        .isInstanceOf(MachineShop.Answer.Refused.class);
    assertThat(away.send(1, HEAD, wanted(ShopWork.OTHER, "")))
        .isInstanceOf(MachineShop.Answer.Refused.class);
    assertThat(away.back(HEAD)).isInstanceOf(MachineShop.Answer.Refused.class);
    assertThat(job.sequence()).isEqualTo(before);
    assertThat(head()).isEqualTo(Whereabouts.OUT);
  }
}
