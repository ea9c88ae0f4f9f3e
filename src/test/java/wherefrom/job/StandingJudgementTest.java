package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.engine.Section;
import wherefrom.engine.Spots;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.job.change.Planning;
import wherefrom.job.decide.Deciding;
import wherefrom.job.entry.DecisionMade;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartLost;
import wherefrom.job.entry.SetDecided;
import wherefrom.job.handling.Handling;
import wherefrom.job.handling.HandlingOutcome;
import wherefrom.job.puttogether.FirstStart;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.puttogether.StopWords;
import wherefrom.job.puttogether.ToFit;
import wherefrom.job.puttogether.WhereTo;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.rules.Hold;
import wherefrom.rules.PartNames;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictName;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;

/** What stands against a part is asked at all times, not only while it is scanned in. */
class StandingJudgementTest {
  private final BenchJob bench = BenchJob.v8();
  private final OpenJob job = bench.job;
  private final Fitting fitting = new Fitting(job);
  private final ToFit missing = new ToFit(job);

  private static Place place(String key) {
    return Place.find(key).orElseThrow();
  }

  /** Fits every part where it belongs. */
  private void fitAll() {
    for (Place place : missing.places()) {
      Part part = job.state().bench().findRightful(place).orElseThrow();
      assertThat(fitting.fit(part, place.spot(), false).word())
          .as(place.key())
          .isEqualTo("right place");
    }
  }

  private Verdict at(String partFrom, String spot) {
    return fitting.judge(bench.part(partFrom), Spots.find(spot).orElseThrow(), false);
  }

  private void fit(String atHome) {
    Place home = place(atHome);
    assertThat(fitting.fit(bench.part(atHome), home.spot(), false).stops()).isFalse();
  }

  private void onPurpose(String partFrom, String spot) {
    fitting.fitOnPurpose(bench.part(partFrom), Spots.find(spot).orElseThrow(), "matched pair");
  }

  private List<String> fittedBut() {
    return missing.fittedBut().stream().map(one -> one.place().key()).toList();
  }

  private void made(ChangeKind kind, String where) {
    assertThat(new Planning(job).make(Change.at(kind, where)))
        .isInstanceOf(Planning.Answer.Made.class);
  }

  @Test
  void aShellThatFailsAfterItWasFittedOpensItsSectionAgain() {
    fitAll();
    missing.sections().forEach(section -> assertThat(missing.finish(section)).isTrue());
    assertThat(new FirstStart(job).isDue()).isTrue();
    bench.look("main-shell@M3L", "main-shell-back", Look.FAIL);
    Verdict again = at("main-shell@M3L", "M3L");
    assertThat(again.word()).isEqualTo("fitted, but");
    assertThat(again.stops()).isTrue();
    assertThat(job.state().state(place("main-shell@M3L"))).isEqualTo(PlaceState.FITTED_BUT);
    assertThat(fittedBut()).containsExactly("main-shell@M3L");
    assertThat(missing.finish(Section.MAINS)).isFalse();
    assertThat(new FirstStart(job).isDue()).isFalse();
    assertThat(new FirstStart(job).points())
        .anyMatch(point -> point.heading().equals("Fitted, but"));
    assertThat(WhereTo.words(job.state(), bench.part("main-shell@M3L"))).contains("But:");
  }

  @Test
  void aReasonThatIsGivenLaterSettlesItAndANewFindingOpensItAgain() {
    fitAll();
    bench.look("main-shell@M3L", "main-shell-back", Look.FAIL);
    onPurpose("main-shell@M3L", "M3L");
    assertThat(fittedBut()).isEmpty();
    assertThat(at("main-shell@M3L", "M3L").stops()).isFalse();
    bench.look("main-shell@M3L", "main-shell-back", Look.FAIL);
    assertThat(fittedBut()).containsExactly("main-shell@M3L");
    missing.leave(place("main-shell@M3L"), "measured, serves for the test run");
    assertThat(fittedBut()).isEmpty();
    assertThat(job.state().bench().reasonGiven(bench.item("main-shell@M3L"))).isPositive();
    assertThat(new FirstStart(job).points()).anyMatch(point -> point.words().contains("test run"));
  }

  @Test
  void aNewPartComesForTheReasonThatWasDecidedLastOfThePartOrOfItsSet() {
    Part shell = bench.part("main-shell@M3L");
    bench.record(new DecisionMade(shell.item(), Decision.REPLACE, "scored"));
    bench.record(new SetDecided(List.of(shell.item()), Decision.REPLACE, "replaced as a set"));
    Verdict held =
        new Verdict.NotCleared(shell, shell.home(), Hold.TO_REPLACE, "it is to be replaced", "");
    assertThat(StopWords.newPart(job.state(), held)).contains("replaced as a set");
  }

  /** Two reasons in the same words are two reasons. */
  @Test
  void whatWasLeftInIsToldBeforeTheFirstStartWhateverWasSaidAsItWasFitted() {
    fitAll();
    bench.look("main-shell@M3L", "main-shell-back", Look.FAIL);
    onPurpose("main-shell@M3L", "M3L");
    assertThat(leftIn()).isZero();
    bench.look("main-shell@M3L", "main-shell-back", Look.FAIL);
    missing.leave(place("main-shell@M3L"), "matched pair");
    assertThat(leftIn()).isEqualTo(1);
  }

  private long leftIn() {
    return new FirstStart(job)
        .points().stream().filter(point -> point.heading().equals("Left in")).count();
  }

  @Test
  void anExcuseForAPartEndsWhenItIsTakenOut() {
    fitAll();
    bench.look("main-shell@M3L", "main-shell-back", Look.FAIL);
    missing.leave(place("main-shell@M3L"), "later");
    new Handling(job).tookOut(bench.item("main-shell@M3L"), "second thoughts");
    assertThat(job.state().findExcuse(place("main-shell@M3L"))).isEmpty();
    assertThat(at("main-shell@M3L", "M3L").word()).isEqualTo("not cleared");
  }

  @Test
  void aNewCamSpeaksAgainstTheUsedLiftersThatAreIn() {
    fitAll();
    made(ChangeKind.NEW_FLAT_CAM, "");
    assertThat(fittedBut()).filteredOn(key -> key.startsWith("lifter@")).hasSize(16);
    assertThat(at("lifter@3EX", "3EX").word()).isEqualTo("fitted, but");
    job.undo();
    assertThat(fittedBut()).isEmpty();
  }

  @Test
  void whatNeverCameOutIsJudgedToo() {
    OpenJob inside = Benches.fresh(PartKind.all());
    new Planning(inside).make(Change.of(ChangeKind.NEW_FLAT_CAM));
    assertThat(inside.state().state(place("lifter@3EX"))).isEqualTo(PlaceState.IN_BUT);
    assertThat(new ToFit(inside).places()).isEmpty();
    assertThat(ToFit.isNothing(inside.state())).isFalse();
  }

  @Test
  void capAndShellsFollowTheirRodAndTheOthersAreRefused() {
    onPurpose("rod@R3U", "R5U");
    assertThat(at("rod-cap@R5L", "R5L").word()).isEqualTo("wrong mate");
    assertThat(at("rod-shell@R5U", "R5U").word()).isEqualTo("wrong mate");
    Verdict home = at("rod-cap@R3L", "R3L");
    assertThat(home.word()).isEqualTo("wrong place");
    assertThat(home.sentence()).contains("goes with the rod");
    assertThat(home.words(PartNames.NUMBERS).small())
        .startsWith("It goes with the rod from cylinder 3. ");
    assertThat(at("rod-cap@R3L", "R5L").word()).isEqualTo("right place");
    assertThat(at("rod-shell@R3L", "R5L").word()).isEqualTo("right place");
    assertThat(at("rod-shell@R3L", "R5U").word()).isEqualTo("wrong half");
    assertThat(at("rod-cap@R5L", "R5L").wayOut())
        .contains(String.format("%04d", bench.item("rod-cap@R3L")));
  }

  @Test
  void aMateThatMovesLaterSpeaksAgainstWhatIsIn() {
    fitAll();
    new Handling(job).tookOut(bench.item("rod@R5U"), "");
    onPurpose("rod@R3U", "R5U");
    assertThat(fittedBut())
        .contains("rod-cap@R5L", "rod-shell@R5U", "rod-shell@R5L")
        .contains("rod-cap@R3L", "rod-shell@R3U", "rod-shell@R3L");
  }

  @Test
  void theLowerShellFollowsItsMainCap() {
    fit("main-shell@M4U");
    fit("main-shell@M4L");
    assertThat(fittedBut()).isEmpty();
    onPurpose("main-cap@M2L", "M4L");
    assertThat(fittedBut()).containsExactly("main-shell@M4L");
    assertThat(at("main-shell@M2L", "M4L").word()).isEqualTo("place taken");
  }

  @Test
  void aLostCapThatIsReplacedWaitsForItsHousing() {
    bench.record(new PartLost(bench.item("rod-cap@R3L"), ""));
    bench.replace("rod-cap@R3L");
    for (String one : List.of("rod-cap@R3L", "rod@R3U", "rod-shell@R3U")) {
      assertThat(bench.verdict(one).sentence()).as(one).contains("(rule 23;");
    }
    assertThat(bench.word("rod-cap@R5L")).isEqualTo("right place");
    made(ChangeKind.ROD_RESIZED, "B3");
    assertThat(bench.word("rod-cap@R3L")).isEqualTo("right place");
    assertThat(bench.word("rod@R3U")).isEqualTo("right place");
    assertThat(bench.verdict("rod-shell@R3U").sentence()).contains("(rule 20;");
  }

  @Test
  void aNewMainCapWaitsUntilTheMainsAreLineHoned() {
    bench.replace("main-cap@M2L");
    assertThat(bench.word("main-cap@M2L")).isEqualTo("not cleared");
    assertThat(bench.verdict("main-cap@M2L").sentence()).contains("(rule 23;");
    assertThat(bench.word("main-shell@M2L")).isEqualTo("wrong mate");
    made(ChangeKind.LINE_HONED, "");
    assertThat(bench.verdict("main-cap@M2L").sentence()).contains("(rule 21)");
    new Planning(job).answer("R21:caps", Look.PASS, "");
    assertThat(bench.word("main-cap@M2L")).isEqualTo("right place");
    assertThat(bench.word("main-shell@M2L")).isEqualTo("wrong mate");
  }

  @Test
  void aNewRodComesWithItsCapButNotWithASecondOne() {
    bench.replace("rod@R3U");
    assertThat(bench.word("rod-cap@R3L")).isEqualTo("wrong mate");
    bench.replace("rod-cap@R3L");
    assertThat(bench.word("rod-cap@R3L")).isEqualTo("right place");
    bench.replace("rod-cap@R3L");
    assertThat(bench.verdict("rod-cap@R3L").sentence()).contains("(rule 23;");
  }

  @Test
  void aCapThatIsNotThisRodsCannotBeDecidedForReuse() {
    bench.look("rod-cap@R3L", "rod-cap-mark", Look.FAIL);
    Deciding.Answer answer =
        new Deciding(job).decide(bench.item("rod-cap@R3L"), Decision.REUSE, "looks fine");
    assertThat(answer).isInstanceOf(Deciding.Answer.Refused.class);
    assertThat(((Deciding.Answer.Refused) answer).sentence()).contains("machined");
  }

  @Test
  void newCountsForTheChangesBeforeItWasTakenOn() {
    bench.replace("rod-shell@R3U");
    made(ChangeKind.ROD_JOURNALS_GROUND, "");
    assertThat(bench.verdict("rod-shell@R3U").sentence()).contains("(rule 16;");
    bench.replace("rod-shell@R3U");
    new Planning(job).answer("R16:rod-fillets", Look.PASS, "");
    assertThat(bench.word("rod-shell@R3U")).isEqualTo("right place");
  }

  @Test
  void aNewFlatLifterIsOfTheWrongSortForARollerCam() {
    bench.replace("lifter@3EX");
    made(ChangeKind.FLAT_TO_ROLLER, "");
    assertThat(bench.verdict("lifter@3EX").sentence()).contains("(rule 7;");
  }

  @Test
  void aNewLifterThatRanOnOneNewCamIsUsedOnTheNext() {
    made(ChangeKind.NEW_FLAT_CAM, "");
    bench.replace("lifter@3EX");
    bench.replace("lifter@5EX");
    assertThat(
            fitting.fit(bench.part("lifter@3EX"), Spots.find("3EX").orElseThrow(), false).stops())
        .isFalse();
    made(ChangeKind.NEW_FLAT_CAM, "");
    assertThat(at("lifter@3EX", "3EX").word()).isEqualTo("fitted, but");
    assertThat(bench.word("lifter@5EX")).isEqualTo("right place");
  }

  @Test
  void aPartReplacedTwiceNamesThePieceInUse() {
    Part first = bench.part("pushrod@3EX");
    bench.replace("pushrod@3EX");
    Part last = bench.replace("pushrod@3EX");
    assertThat(fitting.judge(first, first.home().spot(), false).wayOut())
        .contains(String.format("%04d", last.item()));
  }

  @Test
  void newPartsFromTheBoxGoWhereverOneIsWanted() {
    Part three = bench.replace("lifter@3EX");
    Part five = bench.replace("lifter@5EX");
    assertThat(fitting.judge(three, Spots.find("7EX").orElseThrow(), false).sentence())
        .startsWith("This new lifter is for cylinder 3, exhaust");
    assertThat(fitting.fit(three, Spots.find("5EX").orElseThrow(), false).wayOut())
        .contains("print it again");
    assertThat(job.state().state(place("lifter@5EX"))).isEqualTo(PlaceState.FITTED);
    assertThat(bench.part("lifter@3EX").item()).isEqualTo(five.item());
    assertThat(bench.word("lifter@3EX")).isEqualTo("right place");
    job.undo();
    assertThat(bench.part("lifter@3EX").item()).isEqualTo(three.item());
  }

  @Test
  void identityIsSaidBeforeClearance() {
    bench.record(new OffForWashing(bench.item("pushrod@3EX"), 4));
    bench.record(new PartLost(bench.item("pushrod@1EX"), ""));
    bench.look("pushrod@7EX", "pushrod-roll", Look.FAIL);
    for (String held : List.of("pushrod@3EX", "pushrod@1EX", "pushrod@7EX")) {
      assertThat(at(held, "5EX").word()).as(held).isEqualTo("wrong place");
    }
  }

  @Test
  void anUnknownSlotDoubtsWhatItNamesAlone() {
    new Planning(job).make(Change.noting(ChangeKind.SLOT_UNKNOWN, "pushrod@3EX", "tag washed off"));
    assertThat(bench.word("lifter@3EX")).isEqualTo("right place");
    assertThat(bench.word("rocker@3EX")).isEqualTo("right place");
    assertThat(bench.word("pushrod@3EX")).isEqualTo("not cleared");
    new Planning(job).answer("R3:as-new-mate@pushrod@3EX", Look.PASS, "");
    assertThat(bench.word("pushrod@3EX")).isEqualTo("right place");
  }

  /** Logbooks of earlier versions hold such fits. */
  @Test
  void aRetiredPartThatWasFittedOnPurposeIsRetiredAgainOnceItIsOut() {
    Part old = bench.part("lifter@1EX");
    bench.replace("lifter@1EX");
    bench.record(
        new PartFitted(
            old.item(), old.home(), "the new one came late", Optional.of(VerdictName.RETIRED)));
    assertThat(fitting.judge(old, old.home().spot(), false).stops()).isFalse();
    assertThat(new Handling(job).replace(old.item(), "again"))
        .isEqualTo(
            new HandlingOutcome.Refused("The part is replaced already. This one is fitted."));
    new Handling(job).tookOut(old.item(), "it is here now");
    assertThat(fitting.judge(old, old.home().spot(), false).word()).isEqualTo("retired");
    assertThat(bench.word("lifter@1EX")).isEqualTo("right place");
  }

  @Test
  void aNewCapThatWasMachinedWithItsRodGoesWhereTheRodSits() {
    onPurpose("rod@R3U", "R5U");
    bench.replace("rod-cap@R3L");
    new Planning(job).answer("R23:align-bore@R3", Look.PASS, "");
    assertThat(at("rod-cap@R3L", "R3L").word()).isEqualTo("wrong place");
    assertThat(at("rod-cap@R3L", "R5L").word()).isEqualTo("right place");
  }
}
