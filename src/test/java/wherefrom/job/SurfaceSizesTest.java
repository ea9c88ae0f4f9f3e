package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.job.FittingSize.Basis;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.record.BuildRecord;
import wherefrom.parts.PartKind;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.size.ChangeText;
import wherefrom.rules.size.CutSurface;

/** What is bought fits the size as cut; standard where nothing was cut. */
class SurfaceSizesTest {
  private final SizesBench bench = SizesBench.typed();

  @Test
  void journalsGroundToTenUnderTakeShellsOfTenUnder() {
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in");
    bench.rodJournals("2.2300");
    assertThat(bench.toBuy(PartKind.ROD_SHELL)).containsExactly("0.010 in under (ten under)");
  }

  @Test
  void aJournalALittleUnderItsCutStaysTenUnder() {
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "2.2300 in");
    bench.rodJournals("2.2300");
    bench.rodJournal(3, "2.2298");
    assertThat(bench.toBuy(PartKind.ROD_SHELL)).containsExactly("0.010 in under (ten under)");
  }

  @Test
  void journalsThatMeasureTenUnderWereGroundThoughNobodyWroteItDown() {
    bench.rodJournals("2.2300");
    bench.rodJournal(3, "2.2298");
    bench.toReplace("rod-shell@R3U", "rod-shell@R3L");
    assertThat(bench.toBuy(PartKind.ROD_SHELL))
        .containsExactly("0.010 in under (ten under), as measured");
  }

  @Test
  void aBlockBoredToThirtyOverTakesPistonsOfThirtyOver() {
    bench.bored("3.9000 in");
    for (int at = 1; at <= 8; at++) {
      bench.bore(at, "3.9001", "3.9000");
    }
    assertThat(bench.toBuy(PartKind.PISTON)).containsExactly("0.030 in over (thirty over)");
  }

  @Test
  void nothingGroundAndOneShellFailedTakesStandardShells() {
    bench.rodJournal(3, "2.2398");
    bench.toReplace("rod-shell@R3U", "rod-shell@R3L");
    assertThat(bench.toBuy(PartKind.ROD_SHELL)).containsExactly("standard");
  }

  @Test
  void aBrokenRingLandTakesAPistonThatGoesIntoTheBoreAsItIs() {
    bench.bore(5, "3.8752", "3.8710");
    bench.toReplace("piston@B5");
    assertThat(bench.toBuy(PartKind.PISTON)).containsExactly("standard");
  }

  @Test
  void whereNothingIsMeasuredStandardIsSaidWithItsDoubt() {
    bench.toReplace("rod-shell@R3U");
    assertThat(bench.toBuy(PartKind.ROD_SHELL))
        .containsExactly("standard, if never ground before: measure the rod journal to be sure");
    assertThat(bench.fits("rod-shell@R3U").isKnown()).isFalse();
  }

  @Test
  void whatIsGoingToBeCutTakesTheNextStepThatCleansUp() {
    for (int at = 1; at <= 8; at++) {
      bench.planning.plan(Change.at(ChangeKind.BORED, "B" + at));
      bench.bore(at, "3.8752", "3.8710");
    }
    bench.toReplace("piston@B5");
    assertThat(bench.toBuy(PartKind.PISTON))
        .containsExactly("0.020 in over (twenty over), once bored; the next step that cleans up");
    assertThat(bench.fits("piston@B5").words()).isEqualTo("standard");
  }

  /** Ten under and worn by half a thousandth on one side: one more thousandth comes off. */
  @Test
  void theNextStepCountsFromStandardAndTheWearFromTheLastCut() {
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in");
    bench.rodJournals("2.2295");
    bench.planning.plan(Change.of(ChangeKind.ROD_JOURNALS_GROUND));
    assertThat(bench.toBuy(PartKind.ROD_SHELL))
        .containsExactly(
            "0.020 in under (twenty under), once ground; the next step that cleans up");
  }

  @Test
  void aPlannedSizeIsBoughtAhead() {
    bench.planning.plan(ChangeText.read(ChangeKind.ROD_JOURNALS_GROUND, "", "0.020 in", Unit.INCH));
    bench.toReplace("rod-shell@R3U");
    assertThat(bench.toBuy(PartKind.ROD_SHELL))
        .containsExactly("0.020 in under (twenty under), once ground");
    assertThat(bench.fits("rod-shell@R3U").basis()).isEqualTo(Basis.PRESUMED);
  }

  @Test
  void boresOfTwoSizesTakePistonsOfTwoSizes() {
    bench.made(ChangeKind.BORED, "B3", "0.030 in");
    bench.bore(1, "3.8712", "3.8710");
    assertThat(bench.toBuy(PartKind.PISTON))
        .containsExactly(
            "standard",
            "standard, if never bored before: measure the cylinder bore to be sure",
            "0.030 in over (thirty over)");
  }

  @Test
  void aCutOfUnknownSizeIsNotGuessed() {
    bench.rodJournals("2.2398");
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "");
    assertThat(bench.toBuy(PartKind.ROD_SHELL))
        .containsExactly(
            "not known: say to which size the rod journal was ground, or measure it now");
    bench.rodJournals("2.2300");
    assertThat(bench.toBuy(PartKind.ROD_SHELL))
        .containsExactly("0.010 in under (ten under), as measured");
  }

  @Test
  void aJournalThatMeasuresOtherwiseThanItWasCutIsMeasuredAgain() {
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in");
    bench.rodJournals("2.2300");
    bench.rodJournal(6, "2.2250");
    assertThat(bench.toBuy(PartKind.ROD_SHELL))
        .containsExactly(
            "not known: cylinder 6, rod journal measures 2.2250 in, cut to 2.2300 in:"
                + " measure it again, or ask the machine shop");
  }

  @Test
  void anotherCrankIsMeasuredAnew() {
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in");
    bench.rodJournals("2.2300");
    bench.made(ChangeKind.CRANK_CHANGED, "", "");
    assertThat(bench.fits("rod-shell@R3U").basis()).isEqualTo(Basis.UNKNOWN);
    bench.rodJournals("2.2199");
    assertThat(bench.fits("rod-shell@R3U").words())
        .isEqualTo("0.020 in under (twenty under), as measured");
  }

  @Test
  void withoutTheStandardSizeADiameterTellsNoStepAndASizeStillDoes() {
    SizesBench untyped = SizesBench.untyped();
    untyped.made(ChangeKind.ROD_JOURNALS_GROUND, "", "2.2300 in");
    assertThat(untyped.fits("rod-shell@R3U").step()).isEmpty();
    assertThat(untyped.fits("rod-shell@R3U").words())
        .startsWith("not known: type the standard size of the rod journal first");
    untyped.made(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in undersize");
    assertThat(untyped.fits("rod-shell@R3U").words()).isEqualTo("0.010 in under (ten under)");
  }

  @Test
  void aReadingOfBeforeTheCutTellsNothingOfTheJournalAsItIs() {
    bench.rodJournals("2.2390");
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in");
    SurfaceSize journal = bench.sizes().get(CutSurface.ROD_JOURNAL, "B3");
    assertThat(journal.measured()).isEmpty();
    assertThat(journal.asCut().orElseThrow().text()).isEqualTo("2.2300 in");
    assertThat(bench.toBuy(PartKind.ROD_SHELL)).containsExactly("0.010 in under (ten under)");
  }

  @Test
  void aReadingOfBeforeTheCutCountsWhereItAgreesWithIt() {
    bench.rodJournals("2.2300");
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in");
    SurfaceSize journal = bench.sizes().get(CutSurface.ROD_JOURNAL, "B3");
    assertThat(journal.leastWorn().orElseThrow().text()).isEqualTo("2.2300 in");
    assertThat(bench.sizes().isOfBefore(journal.measured().orElseThrow())).isFalse();
  }

  @Test
  void aReadingOfAfterTheCutCountsWhateverItSays() {
    bench.rodJournals("2.2390");
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in");
    assertThat(bench.sizes().isOfBefore(result(3))).isTrue();
    bench.rodJournal(3, "2.2200");
    SurfaceSize journal = bench.sizes().get(CutSurface.ROD_JOURNAL, "B3");
    assertThat(journal.leastWorn().orElseThrow().text()).isEqualTo("2.2200 in");
    assertThat(bench.sizes().isOfBefore(result(3))).isFalse();
    assertThat(bench.sizes().isOfBefore(result(4))).isTrue();
  }

  /** A step says no diameter while nobody knows the standard size. */
  @Test
  void aReadingOfBeforeACutOfUnknownDiameterTellsNothing() {
    SizesBench untyped = SizesBench.untyped();
    untyped.rodJournals("2.2300");
    assertThat(untyped.sizes().get(CutSurface.ROD_JOURNAL, "B3").measured()).isPresent();
    untyped.made(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in");
    assertThat(untyped.sizes().get(CutSurface.ROD_JOURNAL, "B3").measured()).isEmpty();
  }

  /** What carries no cut has no before. */
  @Test
  void aReadingOfAnotherFeatureIsOfNoCut() {
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in");
    bench.housing(3, "2.3660");
    MeasuredResult housing =
        bench
            .bench
            .job
            .state()
            .measures()
            .findResult(new Subject.AFeature(Feature.ROD_HOUSING, "B3"), "rod-housing")
            .orElseThrow();
    assertThat(bench.sizes().isOfBefore(housing)).isFalse();
  }

  private MeasuredResult result(int cylinder) {
    return bench
        .bench
        .job
        .state()
        .measures()
        .findResult(CutSurface.ROD_JOURNAL.subject("B" + cylinder), "rod-journal")
        .orElseThrow();
  }

  @Test
  void theCutBeforeAnEntryIsTheLastOneThatWasMadeByThen() {
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in");
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "0.020 in");
    SurfaceCuts cuts = SurfaceCuts.of(bench.bench.job.state());
    long last = cuts.find(CutSurface.ROD_JOURNAL, "B3").orElseThrow().sequence();
    assertThat(cut(cuts, last + 1)).contains("0.020 in");
    assertThat(cut(cuts, last)).contains("0.010 in");
    assertThat(cut(cuts, last - 1)).isEmpty();
  }

  private static Optional<String> cut(SurfaceCuts cuts, long before) {
    return cuts.findBefore(CutSurface.ROD_JOURNAL, "B3", before)
        .flatMap(LastCut::size)
        .map(Amount::text);
  }

  @Test
  void whatIsGoingToBeCutIsMeasuredWholeFirst() {
    bench.planning.plan(Change.of(ChangeKind.ROD_JOURNALS_GROUND));
    for (int at = 1; at <= 7; at++) {
      bench.rodJournal(at, "2.2380");
    }
    bench.toReplace("rod-shell@R3U");
    assertThat(bench.toBuy(PartKind.ROD_SHELL))
        .containsExactly("not known: 1 of 8 rod journals not measured");
    bench.rodJournal(8, "2.2380");
    assertThat(bench.toBuy(PartKind.ROD_SHELL))
        .containsExactly("0.010 in under (ten under), once ground; the next step that cleans up");
  }

  @Test
  void threeSizesAreKeptOfEachJournalAndBore() {
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in");
    bench.journal(Feature.ROD_JOURNAL, "B3", "2.2300", "2.2299", "2.2298", "2.2299");
    SurfaceSize journal = bench.sizes().get(CutSurface.ROD_JOURNAL, "B3");
    assertThat(
            Stream.of(journal.standard(), journal.asCut(), journal.leastWorn(), journal.mostWorn())
                .map(size -> size.orElseThrow().text()))
        .containsExactly("2.2400 in", "2.2300 in", "2.2300 in", "2.2298 in");
    assertThat(bench.sizes().list()).hasSize(8 + 5 + 8);
    SurfaceSize main = bench.sizes().get(CutSurface.MAIN_JOURNAL, "M1");
    assertThat(main.asCut()).isEmpty();
    assertThat(main.measured()).isEmpty();
  }

  /**
   * TM 5-3805-262-34, 4-24: main journals of 2.748 to 2.749 in are ground to 2.738 to 2.739, 2.728
   * to 2.729 or 2.718 to 2.719 in for shells of 0.010, 0.020 or 0.030 in undersize.
   */
  @ParameterizedTest
  @CsvSource({
    "2.748, standard", "2.749, standard",
    "2.738, 0.010 in under", "2.739, 0.010 in under",
    "2.728, 0.020 in under", "2.729, 0.020 in under",
    "2.718, 0.030 in under", "2.719, 0.030 in under"
  })
  void undersizesOfAnArmyManual(String cut, String size) {
    for (String standard : List.of("2.748", "2.749")) {
      SizesBench crank = SizesBench.untyped();
      crank.standard("main-journal", standard);
      crank.made(ChangeKind.MAIN_JOURNALS_GROUND, "", cut + " in");
      FittingSize fits = crank.fits("main-shell@M2L");
      assertThat(CutSurface.MAIN_JOURNAL.words(fits.step().orElseThrow())).isEqualTo(size);
      assertThat(fits.basis()).isEqualTo(Basis.CUT);
    }
  }

  @Test
  void aJournalBetweenTheStepsIsNoStep() {
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "2.2250 in");
    assertThat(bench.fits("rod-shell@R3U").step()).isEmpty();
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "0.015 in");
    assertThat(bench.fits("rod-shell@R3U").step()).contains(Amount.of("0.015", Unit.INCH));
  }

  @Test
  void metricStepsAreSaidInMillimetres() {
    SizesBench metric = SizesBench.untyped();
    metric.standard("bore", "98.30 mm");
    metric.bored("98.80 mm");
    assertThat(metric.toBuy(PartKind.PISTON)).containsExactly("0.50 mm over");
  }

  private String missingOfRod(int cylinder) {
    return new OilClearances(bench.bench.job.state())
        .list().stream()
            .filter(bearing -> bearing.words().equals("rod " + cylinder))
            .map(bearing -> String.join(", ", bearing.missing()))
            .findFirst()
            .orElseThrow();
  }

  @Test
  void aClearanceIsNotWorkedOutWithAJournalOfBeforeTheCut() {
    bench.rodJournals("2.2390");
    assertThat(missingOfRod(3)).doesNotContain("journal");
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in");
    assertThat(missingOfRod(3)).contains("journal");
    bench.rodJournals("2.2299");
    assertThat(missingOfRod(3)).doesNotContain("journal");
  }

  @Test
  void theRecordKeepsTheThreeSizes() {
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in");
    bench.rodJournal(3, "2.2298");
    RecordSection sizes =
        BuildRecord.of(bench.bench.job).sections().stream()
            .filter(section -> section.title().equals("Sizes"))
            .findFirst()
            .orElseThrow();
    assertThat(sizes.rows()).hasSize(8);
    assertThat(sizes.rows().get(2).cells())
        .containsExactly(
            "cylinder 3, rod journal",
            "2.2400 in",
            "2.2300 in",
            "2.2298 in",
            "0.010 in under (ten under)",
            "");
  }
}
