package wherefrom.job.bags;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.engine.ReadyLayouts;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Subject;
import wherefrom.job.BenchJob;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.CostNoted;
import wherefrom.job.entry.CostState;
import wherefrom.job.entry.PartOut;
import wherefrom.job.measure.Measuring;
import wherefrom.job.money.PurchaseList;
import wherefrom.job.takeapart.TakeApart;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.BigPartName;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.consequence.Article;

/** Big parts come off and go on in an order; what speaks against it is asked, never forbidden. */
class BigPartsTest {
  private final OpenJob job = BenchJob.v8().job;
  private final BigParts parts = new BigParts(job);

  /** What rules ask to buy of an engine that is apart. */
  private List<String> rules = List.of();

  private BagBook book() {
    return BagBook.of(job.state());
  }

  private int number(String words) {
    return book().bigParts().stream()
        .filter(record -> record.words().equals(words))
        .findFirst()
        .orElseThrow()
        .number();
  }

  private Whereabouts where(String words) {
    return book().findBigPart(number(words)).orElseThrow().where();
  }

  @Test
  void aV8HasTwoHeadsAndNoLifterCoverAtItsSide() {
    parts.nameUsual();
    assertThat(book().bigParts())
        .extracting(BigPartRecord::words)
        .contains("left head", "right head", "left valve cover", "intake manifold", "crankshaft")
        .doesNotContain("lifter cover", "head", "left rocker shaft");
    assertThat(parts.nameUsual()).isInstanceOf(BagOutcome.Refused.class);
  }

  @Test
  void anInlineFourHasOneHeadAndItsLiftersBehindACover() {
    OpenJob four = BenchJob.inline4().job;
    new BigParts(four).nameUsual();
    assertThat(BagBook.of(four.state()).bigParts())
        .extracting(BigPartRecord::words)
        .contains("head", "lifter cover")
        .doesNotContain("left head");
  }

  @Test
  void aHeadWithItsCoverOnIsAskedAboutAndGoesAllTheSameWithAReason() {
    parts.nameUsual();
    int head = number("left head");
    assertThat(parts.off(head, ""))
        .isEqualTo(
            new BagOutcome.Asked(
                "Usually off first: left exhaust manifold; intake manifold; left valve cover."));
    assertThat(where("left head")).isEqualTo(Whereabouts.IN_ENGINE);
    assertThat(parts.off(head, "came off with its manifolds"))
        .isInstanceOf(BagOutcome.Logged.class);
    assertThat(where("left head")).isEqualTo(Whereabouts.OUT);
    assertThat(job.undo().sentence()).contains("left head");
    assertThat(where("left head")).isEqualTo(Whereabouts.IN_ENGINE);
  }

  @Test
  void aValveCoverOverPushrodsThatAreStillToFitIsAskedAbout() {
    parts.nameUsual();
    int cover = number("right valve cover");
    parts.off(cover, "");
    BagOutcome asked = parts.on(cover, "");
    assertThat(asked).isInstanceOf(BagOutcome.Asked.class);
    assertThat(asked.sentence()).startsWith("Goes in first: cylinder ").contains("and 21 more.");
    assertThat(where("right valve cover")).isEqualTo(Whereabouts.OUT);
  }

  @Test
  void whatWasToBeReplacedAsksWhetherThisIsTheNewOne() {
    parts.nameUsual();
    int pump = number("water pump");
    parts.off(pump, "");
    parts.decide(pump, Decision.REPLACE, "cheap to be sure");
    assertThat(parts.on(pump, "").sentence())
        .isEqualTo("Water pump was to be replaced. Is this the new one?");
    parts.on(pump, "new one fitted");
    assertThat(where("water pump")).isEqualTo(Whereabouts.FITTED);
  }

  /** Off again, nothing that was decided before it went on says what becomes of it now. */
  @Test
  void whatComesOffAgainIsDecidedAnew() {
    parts.nameUsual();
    int pump = number("water pump");
    parts.decide(pump, Decision.REUSE, "it is good");
    parts.off(pump, "");
    assertThat(book().findBigPart(pump).orElseThrow().decision()).contains(Decision.REUSE);
    parts.on(pump, "");
    assertThat(parts.off(pump, "").sentence()).endsWith("Decide about it again.");
    BigPartRecord again = book().findBigPart(pump).orElseThrow();
    assertThat(again.decision()).isEmpty();
    assertThat(again.before()).contains(Decision.REUSE);
    parts.decide(pump, Decision.REPLACE, "it weeps");
    assertThat(book().findBigPart(pump).orElseThrow().before()).isEmpty();
    job.undo();
    job.undo();
    assertThat(book().findBigPart(pump).orElseThrow().decision()).contains(Decision.REUSE);
  }

  @Test
  void whatWasDecidedWhileItWasOnStandsAsItComesOff() {
    parts.nameUsual();
    int pump = number("water pump");
    parts.off(pump, "");
    parts.on(pump, "");
    parts.decide(pump, Decision.REPLACE, "it weeps");
    parts.off(pump, "");
    assertThat(book().findBigPart(pump).orElseThrow().decision()).contains(Decision.REPLACE);
  }

  @Test
  void ofAHeadItsFaceAndItsOwnDeckAreMeasured() {
    assertThat(BigPartSizes.of(job.state().layout(), new BigPartName(BigPartKind.HEAD, "left", "")))
        .extracting(Subject::key)
        .containsExactly("head@left", "deck@left");
    OpenJob four = BenchJob.inline4().job;
    assertThat(BigPartSizes.of(four.state().layout(), new BigPartName(BigPartKind.HEAD, "", "")))
        .hasSize(2);
    assertThat(BigPartSizes.of(job.state().layout(), BigPartName.own("oil cooler"))).isEmpty();
  }

  /** A key that leads nowhere helps nobody. */
  @Test
  void allThatIsMeasuredOnABigPartHasAPlan() {
    Measuring measuring = new Measuring(job);
    for (BigPartName name : BigPartName.usual(job.state().layout())) {
      assertThat(BigPartSizes.of(job.state().layout(), name))
          .as(name.words())
          .allSatisfy(subject -> assertThat(measuring.listPlans(subject)).isNotEmpty());
    }
  }

  @Test
  void anEngineComesApartAsProposedWithoutAQuestionAndAllOfItGoesOnAgain() {
    for (BenchJob bench : List.of(BenchJob.v8(), BenchJob.inline4())) {
      List<String> off = takeAllOff(bench.job);
      List<String> on = putAllOn(bench.job);
      assertThat(on).containsExactlyInAnyOrderElementsOf(off);
    }
  }

  /** All tagged parts are out of these benches already. */
  private static List<String> takeAllOff(OpenJob job) {
    BigParts parts = new BigParts(job);
    parts.nameUsual();
    assertThat(TakeApart.listInside(job.state())).isEmpty();
    List<String> off = new ArrayList<>();
    for (Optional<BigPartRecord> next = next(job, true); next.isPresent(); next = next(job, true)) {
      assertThat(parts.off(next.get().number(), "")).isInstanceOf(BagOutcome.Logged.class);
      off.add(next.get().words());
    }
    assertThat(BagBook.of(job.state()).bigParts()).noneMatch(BigPartRecord::isOn);
    return off;
  }

  /** Where tagged parts hold one up, nobody waits for them here. */
  private static List<String> putAllOn(OpenJob job) {
    BigParts parts = new BigParts(job);
    List<String> on = new ArrayList<>();
    for (int round = 0; round < 30; round++) {
      for (BigPartRecord record : BagBook.of(job.state()).bigPartsOff()) {
        BigPartOrder order = new BigPartOrder(job.state(), BagBook.of(job.state()));
        if (order.under(record.part().name()).isEmpty()) {
          parts.on(record.number(), "the tagged parts are looked at elsewhere");
          on.add(record.words());
          break;
        }
      }
    }
    return on;
  }

  private static Optional<BigPartRecord> next(OpenJob job, boolean off) {
    BigPartOrder order = new BigPartOrder(job.state(), BagBook.of(job.state()));
    return off ? order.findNextOff() : order.findNextOn();
  }

  @Test
  void aPartOfTheBottomEndIsCoveredByThePanAlone() {
    parts.nameUsual();
    BigPartOrder order = new BigPartOrder(job.state(), book());
    assertThat(order.over(Place.find("rod-cap@R3L").orElseThrow()))
        .extracting(BigPartRecord::words)
        .containsExactly("oil pan");
    assertThat(order.over(Place.find("main-shell@M2U").orElseThrow()))
        .extracting(BigPartRecord::words)
        .containsExactly("oil pan", "crankshaft");
  }

  @Test
  void gasketsFollowFromWhatWasOpened() {
    parts.nameUsual();
    assertThat(AlwaysNew.of(book())).isEmpty();
    parts.off(number("left valve cover"), "");
    parts.off(number("right valve cover"), "");
    parts.off(number("water pump"), "");
    parts.off(number("damper"), "");
    parts.off(number("front cover"), "");
    assertThat(AlwaysNew.of(book()))
        .extracting(line -> line.pieces() + " " + line.what())
        .containsExactly(
            "2 valve cover gasket",
            "1 water pump gasket",
            "1 front cover gasket",
            "1 front crank seal");
  }

  /** On the list by one press, it grows with what is opened; what is ordered leaves it. */
  @Test
  void whatIsAlwaysNewIsBoughtOnceAPersonSaysSo() {
    parts.nameUsual();
    parts.off(number("water pump"), "");
    rules = bought();
    parts.listGaskets(true);
    assertThat(parts.listGaskets(true)).isInstanceOf(BagOutcome.Refused.class);
    parts.off(number("damper"), "");
    parts.off(number("front cover"), "");
    parts.off(number("left head"), "for the test");
    assertThat(bought())
        .containsExactlyInAnyOrder(
            "1 water pump gasket", "1 front cover gasket", "1 front crank seal", "1 head gaskets");
    job.record(new CostNoted(1, Article.read("front crank seal"), "", CostState.PAID, 900, 0, ""));
    assertThat(bought()).hasSize(3).doesNotContain("1 front crank seal");
    parts.listGaskets(false);
    assertThat(bought()).isEmpty();
  }

  private List<String> bought() {
    return new PurchaseList(job.state())
        .lines().stream()
            .map(thing -> thing.pieces() + " " + thing.what().words())
            .filter(line -> !rules.contains(line))
            .toList();
  }

  @Test
  void numbersOfStepsTakenBackAreNeverGivenOutAgain() {
    parts.nameOwn("dipstick tube");
    job.undo();
    parts.nameOwn("oil filler");
    assertThat(number("oil filler")).isEqualTo(2);
    assertThat(parts.nameOwn("Oil filler")).isInstanceOf(BagOutcome.Refused.class);
    assertThat(parts.nameOwn(" ")).isInstanceOf(BagOutcome.Refused.class);
  }

  @Test
  void whatIsOnTheEngineGoesNowhereElse() {
    parts.nameUsual();
    assertThat(parts.move(number("damper"), Whereabouts.AT_SHOP, "").sentence())
        .isEqualTo("Damper is in the engine. Take it off first.");
    assertThat(parts.mark(99, "x")).isInstanceOf(BagOutcome.Refused.class);
  }

  @Test
  void aHeadIsHeldByThePushrodsThatAreStillInside() {
    OpenJob whole = BenchJob.whole(ReadyLayouts.find("v8-odd-even").orElseThrow(), PartKind.all());
    new BigParts(whole).nameUsual();
    BigPartOrder order = new BigPartOrder(whole.state(), BagBook.of(whole.state()));
    BigPartRecord head =
        BagBook.of(whole.state()).bigParts().stream()
            .filter(record -> record.words().equals("left head"))
            .findFirst()
            .orElseThrow();
    assertThat(order.holding(head.part().name())).hasSize(16);
    order.holding(head.part().name()).forEach(part -> whole.record(new PartOut(part.item())));
    assertThat(
            new BigPartOrder(whole.state(), BagBook.of(whole.state())).holding(head.part().name()))
        .isEmpty();
  }
}
