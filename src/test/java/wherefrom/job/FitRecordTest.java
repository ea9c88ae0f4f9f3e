package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.engine.Spots;
import wherefrom.inspection.Look;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.job.entry.PlaceExcused;
import wherefrom.job.handling.Handling;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.puttogether.ToFit;
import wherefrom.job.tags.Tracking;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.rules.Attempt;
import wherefrom.rules.CodeVerdict;
import wherefrom.rules.Verdict;

/** What the record says sits where, after fits, second thoughts, and parts that made room. */
class FitRecordTest {
  private final BenchJob bench = BenchJob.v8();
  private final OpenJob job = bench.job;
  private final Fitting fitting = new Fitting(job);
  private final Handling handling = new Handling(job);

  private static Place place(String key) {
    return Place.find(key).orElseThrow();
  }

  private Verdict fit(String partFrom, String spot) {
    return fitting.fit(bench.part(partFrom), Spots.find(spot).orElseThrow(), false);
  }

  private Verdict onPurpose(String partFrom, String spot) {
    return fitting.fitOnPurpose(bench.part(partFrom), Spots.find(spot).orElseThrow(), "better");
  }

  private Optional<String> stop() {
    return job.state().standingStop().map(stop -> stop.word().word());
  }

  private Optional<Part> in(String place) {
    return job.state().findFitted(place(place));
  }

  @Test
  void aFitOfALaterPartStaysWhenAnEarlierOneIsTakenBack() {
    fit("pushrod@1IN", "1IN");
    fit("pushrod@3IN", "3IN");
    fitting.takeBack(bench.part("pushrod@1IN"));
    assertThat(in("pushrod@1IN")).isEmpty();
    assertThat(in("pushrod@3IN")).contains(bench.part("pushrod@3IN"));
    assertThat(job.state().standing())
        .noneMatch(it -> it.entry() instanceof PartFitted one && one.place().key().contains("1IN"));
  }

  /** It was left empty for want of its part; that reason is gone with the part's coming. */
  @Test
  void aReasonToLeaveAPlaceEmptyEndsWithAFit() {
    bench.record(new PlaceExcused(place("pushrod@1IN"), "none to be had"));
    assertThat(job.state().findExcuse(place("pushrod@1IN"))).contains("none to be had");
    fit("pushrod@1IN", "1IN");
    assertThat(job.state().findExcuse(place("pushrod@1IN"))).isEmpty();
    bench.record(new PartUnfitted(bench.item("pushrod@1IN"), "it was dirty"));
    assertThat(job.state().findExcuse(place("pushrod@1IN"))).isEmpty();
  }

  @Test
  void whatMadeRoomStaysOutWhenTheFitIsTakenBack() {
    onPurpose("pushrod@1IN", "3IN");
    Part right = bench.part("pushrod@3IN");
    Verdict verdict =
        fitting.tookOut(
            bench.part("pushrod@1IN"),
            "wrong one",
            new Attempt(right, Spots.find("3IN").orElseThrow(), false));
    assertThat(verdict).isInstanceOf(Verdict.RightPlace.class);
    fitting.takeBack(right);
    assertThat(in("pushrod@3IN")).isEmpty();
    assertThat(job.state().findFittedAt(bench.item("pushrod@1IN"))).isEmpty();
    assertThat(job.history().get(job.history().size() - 1).entry())
        .isEqualTo(new PartUnfitted(right.item(), "it was in turned"));
  }

  @Test
  void whatIsNotFittedHasNothingToTakeBack() {
    fit("pushrod@3IN", "3IN");
    int before = job.history().size();
    fitting.takeBack(bench.part("pushrod@1IN"));
    assertThat(job.history()).hasSize(before);
  }

  @Test
  void aPartThatMovesOnPurposeLeavesItsPlaceEmpty() {
    fit("pushrod@1IN", "1IN");
    onPurpose("pushrod@1IN", "3IN");
    assertThat(in("pushrod@1IN")).isEmpty();
    assertThat(in("pushrod@3IN")).contains(bench.part("pushrod@1IN"));
    assertThat(job.state().fitted()).hasSize(1);
  }

  /** Logbooks of the first versions tell of the new part alone. */
  @Test
  void onePartGoesInWhereAnotherSatAndTheOtherIsOut() {
    onPurpose("pushrod@1IN", "3IN");
    bench.record(new PartFitted(bench.item("pushrod@3IN"), place("pushrod@3IN")));
    assertThat(in("pushrod@3IN")).contains(bench.part("pushrod@3IN"));
    assertThat(job.state().findFittedAt(bench.item("pushrod@1IN"))).isEmpty();
    assertThat(job.state().bench().reasonGiven(bench.item("pushrod@1IN"))).isZero();
    assertThat(job.state().onPurpose()).isEmpty();
  }

  @Test
  void aFittedPartThatIsReplacedSitsThereNoMore() {
    fit("pushrod@1IN", "1IN");
    bench.replace("pushrod@1IN");
    assertThat(in("pushrod@1IN")).isEmpty();
    assertThat(job.state().state(place("pushrod@1IN"))).isEqualTo(PlaceState.OUT);
    assertThat(new ToFit(job).places()).contains(place("pushrod@1IN"));
  }

  @Test
  void aReasonForAPartThatIsInTakesNothingOut() {
    fit("main-shell@M3L", "M3L");
    bench.look("main-shell@M3L", "main-shell-back", Look.FAIL);
    assertThat(onPurpose("main-shell@M3L", "M3L").word()).isEqualTo("fitted, but");
    assertThat(job.history())
        .noneMatch(it -> it.each().anyMatch(one -> one.entry() instanceof PartUnfitted));
    assertThat(in("main-shell@M3L")).contains(bench.part("main-shell@M3L"));
  }

  @Test
  void aStopOverAFittedPartIsSolvedOnceThatPartIsOut() {
    fit("pushrod@1IN", "1IN");
    fit("main-shell@M3L", "M3L");
    bench.look("main-shell@M3L", "main-shell-back", Look.FAIL);
    fit("main-shell@M3L", "M3L");
    assertThat(stop()).contains("fitted, but");
    handling.tookOut(bench.item("pushrod@1IN"), "");
    assertThat(stop()).contains("fitted, but");
    handling.tookOut(bench.item("main-shell@M3L"), "");
    assertThat(stop()).isEmpty();
  }

  /** It was held at another place: that is not answered by taking it out of its own. */
  @Test
  void anotherStopIsNotSolvedByTakingThePartOut() {
    fit("pushrod@1IN", "1IN");
    fit("pushrod@1IN", "3IN");
    assertThat(stop()).contains("already fitted");
    handling.tookOut(bench.item("pushrod@1IN"), "");
    assertThat(stop()).contains("already fitted");
    fit("pushrod@1IN", "1IN");
    assertThat(stop()).isEmpty();
  }

  @Test
  void aTagOfAnotherEngineStandsAsAStopAndAForeignBarcodeDoesNot() {
    Optional<wherefrom.engine.Spot> here = Spots.find("3IN");
    assertThat(fitting.refuse(new CodeVerdict.NotOneOfOurs("59012", false), here)).isFalse();
    assertThat(stop()).isEmpty();
    assertThat(fitting.refuse(new CodeVerdict.WrongEngine(7, Optional.empty()), here)).isTrue();
    assertThat(stop()).contains("wrong engine");
  }

  @Test
  void whatCannotLiveAtAPlaceUnmatesNothingThereAndIsNeverMeant() {
    Part pushrod = bench.part("pushrod@1IN");
    assertThat(fitting.findUnmated(pushrod, Spots.find("M3L").orElseThrow())).isEmpty();
    assertThat(fitting.findUnmated(pushrod, Spots.find("3IN").orElseThrow())).isPresent();
    assertThat(fitting.findUnmated(pushrod, Spots.find("1IN").orElseThrow())).isEmpty();
    assertThatThrownBy(() -> onPurpose("pushrod@1IN", "M3L")).hasMessageContaining("cannot be");
    onPurpose("pushrod@1IN", "3IN");
    assertThat(Unmated.all(job.state()))
        .singleElement()
        .satisfies(it -> assertThat(it.opened()).isEqualTo("1 IN is open."));
  }

  /** Its tag may hang on something, though the step was taken back. */
  @Test
  void aNumberIsNeverUsedTwice() {
    int last = job.nextItem();
    bench.replace("pushrod@1IN");
    job.undo();
    assertThat(job.nextItem()).isEqualTo(last + 1);
    OpenJob other = Benches.apart();
    new Tracking(other).track(List.of(PartKind.CAM_BEARING));
    assertThat(other.nextItem()).isEqualTo(80);
    int issue = job.nextIssue(bench.item("pushrod@3IN"));
    handling.reissue(bench.item("pushrod@3IN"), "tag lost");
    handling.reissue(bench.item("pushrod@5IN"), "tag lost");
    handling.reissue(bench.item("pushrod@5IN"), "tag lost");
    assertThat(job.nextIssue(bench.item("pushrod@3IN"))).isEqualTo(issue + 1);
  }
}
