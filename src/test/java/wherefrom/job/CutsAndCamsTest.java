package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.engine.LifterType;
import wherefrom.job.FittingSize.Basis;
import wherefrom.job.change.Bought;
import wherefrom.job.change.Cams;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.PartSort;
import wherefrom.job.handling.NewPart;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.shop.MachineShop;
import wherefrom.job.shop.ShopOrder;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.ShopWork;
import wherefrom.rules.size.ChangeText;

/** Cuts that are coming, sizes that nobody said, the sort of what was bought, and which cam. */
class CutsAndCamsTest {
  private final SizesBench bench = SizesBench.typed();

  private FittingSize toBuy(String place) {
    return bench.sizes().findToBuy(Place.find(place).orElseThrow()).orElseThrow();
  }

  private void sent(ShopWork work, String size, String... where) {
    ShopOrder order =
        new ShopOrder(work, java.util.List.of(where), "crank", 1, "the work", size, "", false);
    assertThat(bench.shop.add(1, order)).isInstanceOf(MachineShop.Answer.Done.class);
  }

  private Part bought(String place, String sort) {
    int item = bench.bench.item(place);
    bench.bench.record(
        new PartReplaced(
            item, bench.bench.job.nextItem(), "must be new", Optional.empty(), PartSort.of(sort)));
    return bench.bench.part(place);
  }

  private String sort(Part part) {
    return Bought.of(bench.bench.job.state()).findSort(part).map(Article::words).orElse("");
  }

  @Test
  void anotherCrankBringsItsMainJournalsToo() {
    bench.made(ChangeKind.MAIN_JOURNALS_GROUND, "", "0.010 in");
    assertThat(bench.fits("main-shell@M2L").basis()).isEqualTo(Basis.CUT);
    bench.made(ChangeKind.CRANK_CHANGED, "", "");
    assertThat(bench.fits("main-shell@M2L").words())
        .isEqualTo("not known: measure each main journal of the other crank");
  }

  @Test
  void theSlipsOtherLineIsStillAtTheShop() {
    sent(ShopWork.GRIND_RODS, "0.010 in");
    sent(ShopWork.GRIND_MAINS, "0.020 in");
    bench.shop.backByCount(1, 1, 1, "", "");
    assertThat(toBuy("rod-shell@R3U").words()).isEqualTo("0.010 in under (ten under)");
    assertThat(toBuy("main-shell@M3U").words())
        .isEqualTo("0.020 in under (twenty under), once ground");
    assertThat(toBuy("main-shell@M3U").basis()).isEqualTo(Basis.COMING);
  }

  @Test
  void aPlannedCutIsThatOfItsOwnSurface() {
    bench.planning.plan(
        ChangeText.read(ChangeKind.MAIN_JOURNALS_GROUND, "", "0.010 in", Unit.INCH));
    bench.planning.plan(ChangeText.read(ChangeKind.BORED, "B3", "0.030 in", Unit.INCH));
    assertThat(toBuy("rod-shell@R3U").basis()).isEqualTo(Basis.PRESUMED);
    assertThat(toBuy("piston@B3").words()).isEqualTo("0.030 in over (thirty over), once bored");
    assertThat(toBuy("piston@B5").basis()).isEqualTo(Basis.PRESUMED);
  }

  /** Only the bores that are going to be bored, and to a size that nobody said, are measured. */
  @Test
  void theStepThatCleansUpIsAskedOfTheBoresThatAreBoredAlone() {
    bench.planning.plan(ChangeText.read(ChangeKind.BORED, "B3", "0.030 in", Unit.INCH));
    bench.planning.plan(Change.at(ChangeKind.BORED, "B5"));
    assertThat(toBuy("piston@B5").words())
        .isEqualTo("not known: 1 of 1 cylinder bore not measured");
    assertThat(toBuy("piston@B5").basis()).isEqualTo(Basis.UNKNOWN);
    bench.bore(5, "3.8752", "3.8710");
    assertThat(toBuy("piston@B5").words())
        .isEqualTo("0.020 in over (twenty over), once bored; the next step that cleans up");
  }

  /** Thirty over already, and round: boring it again makes it forty over. */
  @Test
  void whatIsBoredAgainIsBoredFurther() {
    bench.bored("3.9000 in");
    for (int at = 1; at <= 8; at++) {
      bench.bore(at, "3.9000", "3.9000");
      bench.planning.plan(Change.at(ChangeKind.BORED, "B" + at));
    }
    assertThat(toBuy("piston@B5").words())
        .isEqualTo("0.040 in over (forty over), once bored; the next step that cleans up");
  }

  @Test
  void aCutBetweenTheStepsIsNotKnownYetAlsoWhileItIsComing() {
    bench.planning.plan(
        ChangeText.read(ChangeKind.ROD_JOURNALS_GROUND, "", "2.2250 in", Unit.INCH));
    assertThat(toBuy("rod-shell@R3U").basis()).isEqualTo(Basis.UNKNOWN);
    assertThat(toBuy("rod-shell@R3U").step()).isEmpty();
  }

  @Test
  void aJournalThatMeasuresBetweenTheStepsIsNamed() {
    bench.rodJournals("2.2300");
    bench.rodJournal(6, "2.2250");
    assertThat(bench.fits("rod-shell@R3U").words())
        .isEqualTo(
            "not known: cylinder 6, rod journal measures 2.2250 in, between the usual steps: ask"
                + " the machine shop");
  }

  /** Ground, they say, but it measures standard: that is no answer. */
  @Test
  void aJournalThatWasGroundAndMeasuresStandardIsAskedAbout() {
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "");
    bench.rodJournals("2.2398");
    assertThat(bench.fits("rod-shell@R3U").words())
        .isEqualTo("not known: say to which size the rod journal was ground, or measure it now");
    bench.rodJournals("2.2250");
    assertThat(bench.fits("rod-shell@R3U").words()).contains("between the usual steps");
  }

  /** Two thousandths from the step are still meant to be the step; more are not. */
  @Test
  void twoThousandthsFromAStepAreStillTheStep() {
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in");
    bench.rodJournals("2.2280");
    assertThat(bench.fits("rod-shell@R3U").words()).isEqualTo("0.010 in under (ten under)");
    bench.rodJournals("2.2279");
    assertThat(bench.fits("rod-shell@R3U").words()).startsWith("not known");
  }

  @Test
  void theSortOfANewPartIsWhatWasSaidOrWhatTheChangeBeforeItWants() {
    assertThat(sort(bought("lifter@1IN", ""))).isEmpty();
    bench.made(ChangeKind.FLAT_TO_ROLLER, "", "");
    assertThat(sort(bench.bench.part("lifter@1IN"))).isEmpty();
    assertThat(sort(bought("lifter@3EX", ""))).isEqualTo("roller lifters");
    assertThat(sort(bought("lifter@5EX", "flat"))).isEqualTo("flat lifters");
    assertThat(sort(bought("rocker@5EX", "long slot rockers"))).isEqualTo("long slot rockers");
    assertThat(sort(bought("valve@3EX", ""))).isEmpty();
    // Another change that concerns the lifters, and says nothing of their sort.
    bench.bench.record(new ChangeMade(0, Change.at(ChangeKind.LOBE_FAILED, "3EX")));
    assertThat(sort(bought("lifter@7EX", ""))).isEqualTo("roller lifters");
  }

  @Test
  void aLifterIsOfTheTypeItWasBoughtAs() {
    Bought before = Bought.of(bench.bench.job.state());
    assertThat(before.lifterType(bench.bench.part("lifter@3EX"))).isEqualTo(LifterType.FLAT);
    bought("lifter@3EX", "roller");
    assertThat(Bought.of(bench.bench.job.state()).lifterType(bench.bench.part("lifter@3EX")))
        .isEqualTo(LifterType.ROLLER);
    assertThat(bench.sizes().findSortOf(bought("lifter@5EX", "").item())).isEmpty();
    assertThat(Bought.at(Place.find("lifter@3EX").orElseThrow())).isEqualTo("lifter@3EX");
  }

  @Test
  void theSortThatTheLastChangeWantsIsOffered() {
    bench.made(ChangeKind.FLAT_TO_ROLLER, "", "");
    bench.bench.record(new ChangeMade(0, Change.at(ChangeKind.ROLLER_TO_FLAT, "")));
    Part lifter = bench.bench.part("lifter@3EX");
    assertThat(NewPart.findSortWanted(bench.bench.job.state(), lifter)).contains("flat");
  }

  /** An engine takes one cam; the next is another one, as is any after a lobe has failed. */
  @Test
  void camsAreCounted() {
    assertThat(next(ChangeKind.NEW_FLAT_CAM)).isEqualTo(1);
    bench.made(ChangeKind.NEW_FLAT_CAM, "", "");
    assertThat(next(ChangeKind.NEW_FLAT_CAM)).isEqualTo(1);
    assertThat(next(ChangeKind.FLAT_TO_ROLLER)).isEqualTo(2);
    bench.bench.record(new ChangeMade(0, Change.at(ChangeKind.LOBE_FAILED, "3EX")));
    assertThat(next(ChangeKind.NEW_FLAT_CAM)).isEqualTo(2);
  }

  private int next(ChangeKind kind) {
    return new Cams(bench.bench.job.state()).next(kind);
  }

  @Test
  void aFitOnPurposeIsToldWithBothPlacesAndWhatStaysOpen() {
    OpenJob job = bench.bench.job;
    Fitting fitting = new Fitting(job);
    fitting.fitOnPurpose(bench.bench.part("pushrod@5EX"), Benches.spot("3EX"), "measured better");
    Unmated one = Unmated.all(job.state()).get(0);
    assertThat(one.told())
        .isEqualTo(
            "The pushrod from 5 EX is fitted at 3 EX on purpose: measured better. Check the parts"
                + " at both places as new mates.");
    assertThat(one.opens()).isTrue();
    assertThat(one.places())
        .extracting(Place::key)
        .contains("lifter@3EX", "rocker@5EX")
        .doesNotContain("valve@3EX", "pivot@5EX");
    fitting.fitOnPurpose(bench.bench.part("pushrod@3EX"), Benches.spot("5EX"), "the other way");
    assertThat(Unmated.all(job.state())).noneMatch(Unmated::opens);
    assertThat(job.state().kinds()).contains(PartKind.VALVE);
  }
}
