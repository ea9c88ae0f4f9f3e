package wherefrom.job.handling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.job.SizesBench;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.PartSort;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.consequence.ChangeKind;

/** A new part says its size and its sort, and is held against the size as cut. */
class NewPartSizeTest {
  private final SizesBench bench = SizesBench.typed();
  private final Handling handling = new Handling(bench.bench.job);

  private Part taken(String place, String size) {
    HandlingOutcome done =
        handling.replace(bench.bench.item(place), "must be new", new NewPart(size, ""));
    return ((HandlingOutcome.Logged) done).part().part();
  }

  private String refused(String place, String size, String sort) {
    HandlingOutcome done =
        handling.replace(bench.bench.item(place), "worn", new NewPart(size, sort));
    return ((HandlingOutcome.Refused) done).sentence();
  }

  private Optional<String> objection(Part part) {
    return bench.sizes().findObjection(part.item(), part.home());
  }

  @Test
  void standardShellsBoughtBeforeTheCrankWasGroundDoNotFit() {
    Part shell = taken("rod-shell@R3U", "standard");
    assertThat(objection(shell)).isEmpty();
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in");
    assertThat(objection(shell))
        .contains("This shell is standard; the journal was cut to 0.010 in under.");
    assertThat(bench.sizes().isOfSize(shell.item(), shell.home())).isFalse();
  }

  @Test
  void shellsOfTheSizeAsCutFitWheneverTheyWereBought() {
    Part before = taken("rod-shell@R3U", "0.010 in");
    assertThat(objection(before)).isEmpty();
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "2.2300 in");
    Part after = taken("rod-shell@R3L", "0.25 mm");
    for (Part shell : new Part[] {before, after}) {
      assertThat(objection(shell)).as(shell.words()).isEmpty();
      assertThat(bench.sizes().isOfSize(shell.item(), shell.home())).isTrue();
    }
  }

  @Test
  void aPistonTooLargeForItsBoreIsNamed() {
    bench.bore(5, "3.8752", "3.8710");
    assertThat(objection(taken("piston@B5", "0.030 in over")))
        .contains("This piston is 0.030 in over; its bore measures standard.");
  }

  @Test
  void aSizeThatNobodySaidOrThatNobodyCanKnowIsNotJudged() {
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in");
    bench.made(ChangeKind.MAIN_JOURNALS_GROUND, "", "");
    Part unsaid = taken("rod-shell@R3U", "");
    Part unknown = taken("main-shell@M2L", "0.010 in");
    for (Part shell : new Part[] {unsaid, unknown}) {
      assertThat(objection(shell)).isEmpty();
      assertThat(bench.sizes().isOfSize(shell.item(), shell.home())).isFalse();
    }
    Place lifter = Place.find("lifter@3EX").orElseThrow();
    assertThat(bench.sizes().isOfSize(bench.bench.item("lifter@3EX"), lifter)).isFalse();
  }

  @Test
  void theListsSizeIsTakenWhereItIsKnown() {
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "2.2300 in");
    Part shell = taken("rod-shell@R3U", NewPart.LISTED);
    assertThat(bench.sizes().findSizeOf(shell.item()).orElseThrow().text()).startsWith("0.010");
    assertThat(refused("main-shell@M2L", NewPart.LISTED, "")).contains("has no size");
  }

  @ParameterizedTest
  @CsvSource({
    "standard, 0",
    "0, 0",
    "0.010 in, 0.010",
    "ten under, 0.010",
    "0.010 undersize, 0.010",
    "0.030, 0.030"
  })
  void aSizeIsReadAsItIsWrittenOnTheBox(String typed, String kept) {
    Part shell = taken("rod-shell@R3U", typed);
    assertThat(bench.sizes().findSizeOf(shell.item()).orElseThrow().number()).isEqualTo(kept);
  }

  @Test
  void whatIsNoSizeIsRefusedAndNothingIsReplaced() {
    for (String typed :
        new String[] {"-0.010", "0.25 in", "3.900 in", "ten feet", "big", "0.010 lb"}) {
      assertThat(refused("rod-shell@R3U", typed, ""))
          .as(typed)
          .contains("is not a size of this part");
    }
    assertThat(refused("pushrod@3EX", "0.010", "")).contains("Only shells and pistons");
    assertThat(refused("lifter@3EX", "", "mushroom"))
        .isEqualTo("A lifter is flat or roller. Say which.");
    assertThat(bench.bench.part("rod-shell@R3U").fresh()).isFalse();
  }

  /** Taken on after the cut, they are new, and of the wrong box all the same. */
  @Test
  void aNewPartOfTheWrongSizeStopsWhereItIsFitted() {
    bench.made(ChangeKind.ROD_JOURNALS_GROUND, "", "0.010 in");
    bench.bored("0.030 in");
    taken("rod-shell@R3U", "standard");
    taken("piston@B5", "0.020 in over");
    assertThat(bench.bench.verdict("rod-shell@R3U").sentence())
        .contains("This shell is standard; the journal was cut to 0.010 in under (rule 16;");
    assertThat(bench.bench.verdict("piston@B5").sentence())
        .contains("This piston is 0.020 in over; its bore was cut to 0.030 in over (rule 18;");
    taken("piston@B5", "0.030 in over");
    assertThat(bench.bench.word("piston@B5")).isEqualTo("not cleared");
    assertThat(bench.bench.verdict("piston@B5").sentence()).contains("a check is open (rule 18)");
  }

  /** Bought before the change was written down, but of the sort that it wants. */
  @Test
  void aRollerLifterBoughtAheadServesTheRollerCamAndAFlatOneDoesNot() {
    for (String sort : new String[] {"roller", "flat"}) {
      String place = sort.equals("roller") ? "lifter@3EX" : "lifter@5EX";
      handling.replace(bench.bench.item(place), "ahead", new NewPart("", sort));
    }
    bench.made(ChangeKind.FLAT_TO_ROLLER, "", "");
    assertThat(bench.bench.word("lifter@3EX")).isEqualTo("right place");
    assertThat(bench.bench.verdict("lifter@5EX").sentence()).contains("(rule 7;");
  }

  @Test
  void theSortIsKept() {
    handling.replace(bench.bench.item("lifter@3EX"), "must be new", new NewPart("", "Roller"));
    assertThat(bench.sizes().findSortOf(bench.bench.item("lifter@3EX")))
        .contains(PartSort.of("roller"));
    assertThat(bench.bench.job.state().standing())
        .anySatisfy(
            logged ->
                assertThat(logged.entry())
                    .isInstanceOfSatisfying(
                        PartReplaced.class,
                        entry -> assertThat(entry.sort()).isEqualTo(PartSort.of("roller"))));
  }

  @Test
  void rollerLiftersAreOfferedWhereTheRulesWantThem() {
    Part lifter = bench.bench.part("lifter@3EX");
    assertThat(NewPart.findSortWanted(bench.bench.job.state(), lifter)).isEmpty();
    bench.made(ChangeKind.FLAT_TO_ROLLER, "", "");
    assertThat(NewPart.findSortWanted(bench.bench.job.state(), lifter)).contains("roller");
    assertThat(NewPart.asListed(bench.bench.job.state(), lifter))
        .isEqualTo(new NewPart("", "roller"));
  }
}
