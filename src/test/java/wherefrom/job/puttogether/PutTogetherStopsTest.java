package wherefrom.job.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.job.OpenJob;
import wherefrom.job.PlaceState;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.BackFromWashing;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.handling.Handling;
import wherefrom.parts.Action;
import wherefrom.parts.Place;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.rules.Cue;
import wherefrom.rules.LeftStanding;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictName;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.ui.sample.SampleJob;

class PutTogetherStopsTest {
  private final SampleJob sample = SampleJob.apart();
  private final PutTogether together = new PutTogether(sample.job);

  private Verdict verdict(FitOutcome step) {
    assertThat(step).isInstanceOf(FitOutcome.Judged.class);
    return ((FitOutcome.Judged) step).verdict();
  }

  @Test
  void aTagOfAnotherEngineStopsAndNoPlaceScansThrough() {
    String other = new TagCode(TagType.PART, SampleJob.OTHER_ENGINE, 7, 1).digits();
    assertThat(verdict(together.scan(sample.read(other))).word()).isEqualTo("wrong engine");
    assertThat(verdict(together.scan(sample.read(sample.card("3EX")))).word())
        .isEqualTo("wrong engine");
    assertThat(together.stop()).isPresent();
    assertThat(verdict(together.scan(sample.read(sample.tag("pushrod@3EX")))).word())
        .isEqualTo("right place");
    assertThat(together.stop()).isEmpty();
    assertThat(sample.job.state().standingStop()).isEmpty();
  }

  @Test
  void aStopIsTakenBackEvenWhenANoteWasWrittenSince() {
    together.scan(sample.read(sample.tag("pushrod@3EX")));
    together.scan(sample.read(sample.card("5EX")));
    sample.job.record(new NoteAdded(3, "wipe"));
    assertThat(together.act(Action.UNDO)).isInstanceOf(FitOutcome.TookBack.class);
    assertThat(sample.job.state().standingStop()).isEmpty();
    assertThat(sample.job.state().getPart(3).remarks()).hasSize(1);
  }

  @Test
  void aFilledPlaceIsFreedWhenItsPartIsTakenOut() {
    together.scan(sample.read(sample.tag("pushrod@5EX")));
    together.scan(sample.read(sample.card("3EX")));
    together.fitOnPurpose("matched pair");
    together.scan(sample.read(sample.tag("pushrod@3EX")));
    assertThat(verdict(together.scan(sample.read(sample.card("3EX")))).word())
        .isEqualTo("place taken");
    assertThat(verdict(together.tookOut()).word()).isEqualTo("right place");
    assertThat(sample.record("pushrod@5EX").where().state()).isEqualTo("out");
  }

  @Test
  void aPartThatMovedIsJudgedAnewWhereItIs() {
    together.scan(sample.read(sample.tag("pushrod@5EX")));
    together.scan(sample.read(sample.card("3EX")));
    together.fitOnPurpose("matched pair");
    together.scan(sample.read(sample.tag("pushrod@5EX")));
    assertThat(verdict(together.scan(sample.read(sample.card("5EX")))).word())
        .isEqualTo("already fitted");
    assertThat(verdict(together.tookOut()).word()).isEqualTo("right place");
    assertThat(sample.job.state().fitted()).hasSize(1);
  }

  @Test
  void aStopEndsWhenTheRightPartIsFoundToSitThereAlready() {
    together.scan(sample.read(sample.tag("pushrod@3EX")));
    together.scan(sample.read(sample.card("3EX")));
    together.scan(sample.read(sample.tag("pushrod@5EX")));
    together.scan(sample.read(sample.card("3EX")));
    assertThat(verdict(together.scan(sample.read(sample.tag("pushrod@3EX")))).word())
        .isEqualTo("already fitted");
    assertThat(together.stop()).isEmpty();
    assertThat(sample.job.state().standingStop()).isEmpty();
    assertThat(sample.job.state().fitted()).hasSize(1);
  }

  @Test
  void nothingIsTakenOutWhereNothingStandsInTheWay() {
    assertThat(together.tookOut()).isInstanceOf(FitOutcome.Said.class);
  }

  /** The program was closed and started again on the same job. */
  private PutTogether restarted() {
    return new PutTogether(new OpenJob(sample.logbook, SampleJob.CLOCK));
  }

  private static Verdict standing(PutTogether after) {
    assertThat(((FitOutcome.Judged) after.last()).verdict()).isEqualTo(after.stop().orElseThrow());
    return after.stop().orElseThrow();
  }

  private String older(String placeKey) {
    String tag = sample.tag(placeKey);
    new Handling(sample.job).reissue(sample.part(placeKey).item(), "soaked in oil");
    return tag;
  }

  @Test
  void aTagOfAnotherEngineStandsAfterARestartInItsOwnWords() {
    String other = new TagCode(TagType.PART, SampleJob.OTHER_ENGINE, 7, 1).digits();
    Verdict given = verdict(together.scan(sample.read(other)));
    PutTogether after = restarted();
    assertThat(standing(after).word()).isEqualTo("wrong engine");
    assertThat(standing(after).sentence()).isEqualTo(given.sentence()).contains("Gray six");
    assertThat(standing(after).wayOut()).isEqualTo(given.wayOut());
    assertThat(standing(after).cue()).isEqualTo(Cue.STOP);
    assertThat(after.canFitOnPurpose()).isFalse();
  }

  @Test
  void anOlderTagStandsAfterARestartInItsOwnWords() {
    Verdict given = verdict(together.scan(sample.read(older("pushrod@3EX"))));
    assertThat(given.name()).isEqualTo(VerdictName.RETIRED);
    PutTogether after = restarted();
    assertThat(standing(after).word()).isEqualTo("retired");
    assertThat(standing(after).sentence())
        .isEqualTo(given.sentence())
        .contains("Cylinder 3, exhaust", "this is an older tag");
    assertThat(standing(after).wayOut()).contains("Take this tag off and destroy it");
    assertThat(after.canFitOnPurpose()).isFalse();
  }

  @Test
  void aStopOfBeforeNamesNoPlaceForWhatIsScannedNow() {
    together.scan(sample.read(sample.card("3EX")));
    together.scan(sample.read(older("pushrod@3EX")));
    PutTogether after = restarted();
    assertThat(standing(after).word()).isEqualTo("retired");
    assertThat(after.scan(sample.read(sample.tag("pushrod@3EX"))))
        .isInstanceOf(FitOutcome.WaitingForSpot.class);
    assertThat(after.waiting()).isZero();
    assertThat(verdict(after.scan(sample.read(sample.card("3EX")))).word())
        .isEqualTo("right place");
    assertThat(after.stop()).isEmpty();
    assertThat(restarted().stop()).isEmpty();
  }

  @Test
  void aStopWhoseCauseIsGoneStandsUntilItIsScannedAgain() {
    int item = sample.part("pushrod@3EX").item();
    sample.job.record(new OffForWashing(item, 4));
    together.scan(sample.read(sample.tag("pushrod@3EX")));
    Verdict given = verdict(together.scan(sample.read(sample.card("3EX"))));
    assertThat(given.name()).isEqualTo(VerdictName.NOT_CLEARED);
    sample.job.record(new BackFromWashing(item));
    PutTogether after = restarted();
    assertThat(standing(after).word()).isEqualTo("not cleared");
    assertThat(standing(after).sentence()).isEqualTo(given.sentence());
    assertThat(standing(after).wayOut()).contains("is settled", "Scan it again");
    assertThat(after.scan(sample.read(sample.tag("pushrod@3EX"))))
        .isInstanceOf(FitOutcome.WaitingForSpot.class);
    assertThat(after.waiting()).isZero();
    assertThat(verdict(after.scan(sample.read(sample.card("3EX")))).word())
        .isEqualTo("right place");
    assertThat(after.stop()).isEmpty();
    assertThat(restarted().stop()).isEmpty();
  }

  @Test
  void aStopThatStandsAfterARestartIsTakenBackByUndo() {
    together.scan(sample.read(new TagCode(TagType.PART, SampleJob.OTHER_ENGINE, 7, 1).digits()));
    PutTogether after = restarted();
    assertThat(after.act(Action.UNDO)).isInstanceOf(FitOutcome.TookBack.class);
    assertThat(after.stop()).isEmpty();
    assertThat(restarted().stop()).isEmpty();
  }

  @Test
  void aPartOfThisEngineAnswersAForeignTagForGood() {
    together.scan(sample.read(new TagCode(TagType.PART, SampleJob.OTHER_ENGINE, 7, 1).digits()));
    assertThat(together.scan(sample.read(sample.tag("pushrod@3EX"))))
        .isInstanceOf(FitOutcome.WaitingForSpot.class);
    assertThat(together.stop()).isEmpty();
    assertThat(restarted().stop()).isEmpty();
  }

  @Test
  void theStopBeforeStandsAgainWhenTheLaterOneIsTakenBack() {
    together.scan(sample.read(sample.card("5EX")));
    together.scan(sample.read(sample.tag("pushrod@3EX")));
    together.scan(sample.read(sample.tag("pushrod@1EX")));
    together.act(Action.UNDO);
    assertThat(together.stop().orElseThrow().sentence()).contains("cylinder 3, exhaust");
    assertThat(restarted().stop()).isEqualTo(together.stop());
    together.act(Action.UNDO);
    assertThat(together.stop()).isEmpty();
    assertThat(restarted().stop()).isEmpty();
  }

  @Test
  void aStopThatAFitSolvedStandsAgainWhenTheFitIsTakenBack() {
    together.scan(sample.read(sample.card("5EX")));
    together.scan(sample.read(sample.tag("pushrod@3EX")));
    together.scan(sample.read(sample.tag("pushrod@5EX")));
    assertThat(together.stop()).isEmpty();
    together.act(Action.UNDO);
    assertThat(together.stop()).as("what is so now").isEmpty();
    assertThat(together.waiting()).isEqualTo(1);
    assertThat(restarted().stop()).isPresent();
  }

  /** Its part turned round and went in: taking that back shows no wrong end that is none. */
  @Test
  void undoOfAFitShowsNoStopThatTheFitHadEnded() {
    together.scan(sample.read(sample.tag("pushrod@3EX")));
    together.scan(sample.read(sample.card("3EX")));
    assertThat(verdict(together.turned()).word()).isEqualTo("wrong end");
    together.scan(sample.read(sample.tag("pushrod@3EX")));
    assertThat(together.stop()).isEmpty();
    for (int step = 0; step < 2; step++) {
      assertThat(together.act(Action.UNDO)).isInstanceOf(FitOutcome.TookBack.class);
      assertThat(together.stop()).isEmpty();
    }
  }

  /** A friend's stop is up: what I scan is mine, and it waits for a place that I name. */
  @Test
  void anotherPartAndAnotherPlaceAreNotJudgedWithAStopOfBefore() {
    together.scan(sample.read(sample.tag("rod-shell@R8L")));
    together.scan(sample.read(sample.card("R7L")));
    int entries = sample.job.history().size();
    PutTogether after = restarted();
    assertThat(after.stop()).isPresent();
    assertThat(after.scan(sample.read(sample.tag("pushrod@3EX"))))
        .isInstanceOf(FitOutcome.WaitingForSpot.class);
    PutTogether placed = restarted();
    assertThat(placed.scan(sample.read(sample.card("R8L"))))
        .as("the part of the stop is in nobody's hand")
        .isInstanceOf(FitOutcome.WaitingForPart.class);
    assertThat(sample.job.history()).hasSize(entries);
    assertThat(restarted().stop()).as("it waits on").isPresent();
  }

  /** Whoever scans its part holds it: the same stop, and then its own place. */
  @Test
  void thePartOfAStopOfBeforeIsInTheHandOnceItIsScanned() {
    together.scan(sample.read(sample.tag("rod-shell@R8L")));
    together.scan(sample.read(sample.card("R7L")));
    int entries = sample.job.history().size();
    PutTogether after = restarted();
    assertThat(verdict(after.scan(sample.read(sample.tag("rod-shell@R8L")))).word())
        .isEqualTo("wrong place");
    assertThat(sample.job.history()).hasSize(entries);
    assertThat(verdict(after.scan(sample.read(sample.card("R8L")))).word())
        .isEqualTo("right place");
  }

  @Test
  void whatIsFoundFittedAlreadySolvesEveryStopBeforeIt() {
    together.scan(sample.read(sample.tag("pushrod@3EX")));
    together.scan(sample.read(sample.card("3EX")));
    together.scan(sample.read(sample.card("3EX")));
    together.scan(sample.read(sample.tag("pushrod@5EX")));
    together.scan(sample.read(sample.tag("pushrod@7EX")));
    assertThat(verdict(together.scan(sample.read(sample.tag("pushrod@3EX")))).stops()).isFalse();
    assertThat(restarted().stop()).isEmpty();
  }

  private String said(FitOutcome step) {
    return ((FitOutcome.Said) step).sentence();
  }

  @Test
  void aPartThatWasSaidToBeInTurnedIsLoggedAsTurnedWhenFittedOnPurpose() {
    together.scan(sample.read(sample.tag("pushrod@3EX")));
    together.scan(sample.read(sample.card("3EX")));
    assertThat(verdict(together.turned()).word()).isEqualTo("wrong end");
    assertThat(together.canFitOnPurpose()).isTrue();
    together.fitOnPurpose("matched pair");
    assertThat(sample.job.state().onPurpose())
        .singleElement()
        .satisfies(fit -> assertThat(fit.against()).contains(VerdictName.WRONG_END));
    assertThat(sample.job.state().state(sample.part("pushrod@3EX").home()))
        .isEqualTo(PlaceState.FITTED_BUT);
  }

  /** The program was closed while the stop stood: the part is held turned still. */
  @Test
  void afterARestartItIsStillTurned() {
    together.scan(sample.read(sample.tag("pushrod@3EX")));
    together.scan(sample.read(sample.card("3EX")));
    together.turned();
    PutTogether after = restarted();
    after.fitOnPurpose("matched pair");
    assertThat(new OpenJob(sample.logbook, SampleJob.CLOCK).state().onPurpose())
        .singleElement()
        .satisfies(fit -> assertThat(fit.against()).contains(VerdictName.WRONG_END));
  }

  @Test
  void turnedRoundAndScannedAgainItFits() {
    together.scan(sample.read(sample.tag("pushrod@3EX")));
    together.scan(sample.read(sample.card("3EX")));
    together.turned();
    assertThat(verdict(together.scan(sample.read(sample.tag("pushrod@3EX")))).word())
        .isEqualTo("right place");
    assertThat(sample.job.state().onPurpose()).isEmpty();
  }

  /** What cannot be overruled is not offered: not by cards, not in the words of help. */
  @Test
  void noReasonIsAskedForWhereNoneOverrules() {
    new Planning(sample.job).make(Change.at(ChangeKind.NEW_FLAT_CAM, ""));
    together.scan(sample.read(sample.tag("lifter@3EX")));
    assertThat(verdict(together.scan(sample.read(sample.card("5EX")))).word())
        .isEqualTo("wrong place");
    assertThat(together.canFitOnPurpose()).isFalse();
    assertThat(said(together.act(Action.HELP))).doesNotContain("On purpose");
    assertThat(said(together.act(Action.NEXT))).contains("must be new");
    assertThat(said(together.act(Action.YES))).contains("must be new");
    assertThat(said(together.fitOnPurpose("it is good"))).contains("must be new");
    assertThat(together.reason()).isEmpty();
    assertThat(sample.job.state().fitted()).isEmpty();
  }

  @Test
  void aStopThatSpeaksOfNoPartSaysSo() {
    together.scan(sample.read(new TagCode(TagType.PART, SampleJob.OTHER_ENGINE, 7, 1).digits()));
    assertThat(said(together.act(Action.NEXT)))
        .isEqualTo("There is no part here to fit on purpose.");
    assertThat(said(together.act(Action.YES)))
        .isEqualTo("There is no part here to fit on purpose.");
    assertThat(together.reason()).isEmpty();
  }

  /** What stood against it is settled: there is nothing that a reason would overrule. */
  @Test
  void aSettledStopIsNotOverruledButScannedAgain() {
    int item = sample.part("pushrod@3EX").item();
    sample.job.record(new OffForWashing(item, 1));
    together.scan(sample.read(sample.tag("pushrod@3EX")));
    together.scan(sample.read(sample.card("3EX")));
    sample.job.record(new BackFromWashing(item));
    PutTogether after = restarted();
    assertThat(standing(after)).isInstanceOf(LeftStanding.class);
    assertThat(after.canFitOnPurpose()).isFalse();
    assertThat(said(after.fitOnPurpose("matched pair"))).contains("Scan it again");
    assertThat(new OpenJob(sample.logbook, SampleJob.CLOCK).state().fitted()).isEmpty();
    assertThat(after.after(() -> {})).isInstanceOf(FitOutcome.WaitingForSpot.class);
    assertThat(verdict(after.scan(sample.read(sample.card("3EX")))).word())
        .isEqualTo("right place");
  }

  private void stopTheShell() {
    together.scan(sample.read(sample.tag("rod-shell@R8L")));
    assertThat(verdict(together.scan(sample.read(sample.card("R7L")))).word())
        .isEqualTo("wrong place");
  }

  @Test
  void aStopWaitsWhereAnotherPartIsFittedElsewhere() {
    stopTheShell();
    assertThat(verdict(together.scan(sample.read(sample.tag("pushrod@7IN")))).word())
        .isEqualTo("wrong kind");
    assertThat(verdict(together.scan(sample.read(sample.card("7IN")))).word())
        .isEqualTo("right place");
    assertThat(together.stop()).as("the pushrod was judged again").isEmpty();
    assertThat(together.waiting()).isEqualTo(1);
    assertThat(sample.job.state().standingStop().orElseThrow().item())
        .isEqualTo(sample.part("rod-shell@R8L").item());
    together.resumeWaiting();
    assertThat(together.stop().orElseThrow().word()).isEqualTo("wrong place");
    assertThat(verdict(new PutTogether(sample.job).last()).word()).isEqualTo("wrong place");
  }

  @Test
  void aStopEndsWhereItsVeryPlaceIsFilled() {
    stopTheShell();
    assertThat(verdict(together.scan(sample.read(sample.tag("rod-shell@R7L")))).word())
        .isEqualTo("right place");
    assertThat(sample.job.state().standingStop()).isEmpty();
  }

  @Test
  void aStopEndsWhereItsPartIsPutAway() {
    stopTheShell();
    new Handling(sample.job).lost(sample.part("rod-shell@R8L").item(), "");
    together.letGoOfEnded();
    assertThat(together.stop()).isEmpty();
    assertThat(sample.job.state().standingStop()).isEmpty();
    sample.job.undo();
    assertThat(sample.job.state().standingStop()).isPresent();
  }

  @Test
  void aPushrodSaysNothingOfARockerThatWasStoppedAtTheSameSpot() {
    together.scan(sample.read(sample.tag("rocker@5EX")));
    together.scan(sample.read(sample.card("3EX")));
    assertThat(verdict(together.scan(sample.read(sample.tag("pushrod@3EX")))).word())
        .isEqualTo("right place");
    assertThat(sample.job.state().standingStop().orElseThrow().item())
        .isEqualTo(sample.part("rocker@5EX").item());
    assertThat(together.scan(sample.read(sample.tag("rocker@3EX"))))
        .isInstanceOf(FitOutcome.WaitingForSpot.class);
    assertThat(verdict(together.scan(sample.read(sample.card("3EX")))).word())
        .isEqualTo("right place");
    assertThat(sample.job.state().standingStop()).isEmpty();
  }

  @Test
  void aTapOnAnotherKindThanIsInTheHandIsAWrongKind() {
    together.scan(sample.read(sample.tag("pushrod@3EX")));
    assertThat(verdict(together.tap(Place.find("rocker@3EX").orElseThrow())).word())
        .isEqualTo("wrong kind");
    assertThat(together.canFitOnPurpose()).isFalse();
    assertThat(verdict(together.tap(Place.find("pushrod@3EX").orElseThrow())).word())
        .isEqualTo("right place");
  }

  @Test
  void aPlaceThatWasTappedFirstWantsItsKindAndACardWantsAny() {
    together.tap(Place.find("rocker@3EX").orElseThrow());
    assertThat(verdict(together.scan(sample.read(sample.tag("pushrod@3EX")))).word())
        .isEqualTo("wrong kind");
    assertThat(verdict(together.scan(sample.read(sample.card("3EX")))).word())
        .isEqualTo("right place");
  }

  @Test
  void undoTakesBackTheFitThatCameAfterAWaitingStopAndNotThatStop() {
    stopTheShell();
    together.scan(sample.read(sample.tag("pushrod@7IN")));
    together.scan(sample.read(sample.card("7IN")));
    together.act(Action.UNDO);
    assertThat(sample.job.state().fitted()).isEmpty();
    assertThat(sample.job.state().stops().of(sample.part("rod-shell@R8L").item())).hasSize(1);
  }
}
