package wherefrom.ui.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.PlaceState;
import wherefrom.job.handling.Handling;
import wherefrom.job.handling.NewPart;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.puttogether.FitMode;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.job.puttogether.ToFit;
import wherefrom.parts.Action;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.rules.Cue;
import wherefrom.ui.sample.SampleJob;

class PutTogetherModelTest {
  private final SampleJob sample = SampleJob.apart();
  private final PutTogetherModel model = new PutTogetherModel(sample.job);

  private void fit(String placeKey, String spotKey) {
    model.scan(sample.read(sample.tag(placeKey)));
    model.scan(sample.read(sample.card(spotKey)));
  }

  @Test
  void theRightPartAtItsPlaceIsRightAndOneFewerIsMissing() {
    assertThat(new ToFit(sample.job).places().size()).isEqualTo(74);
    assertThat(model.scan(sample.read(sample.tag("pushrod@3EX")))).isEmpty();
    assertThat(model.answer().lines()).containsExactly("3 EX pushrod");
    assertThat(model.scan(sample.read(sample.card("3EX")))).contains(Cue.RIGHT);
    assertThat(new ToFit(sample.job).places().size()).isEqualTo(73);
    assertThat(model.kind()).isEqualTo(PartKind.PUSHROD);
    assertThat(sample.state("pushrod@3EX")).isEqualTo(PlaceState.FITTED);
  }

  @Test
  void aStopSaysInThreeLinesWhereFromWhereAndWhatIsRight() {
    fit("pushrod@3EX", "5EX");
    TagCode right = sample.part("pushrod@5EX").code(SampleJob.ENGINE);
    assertThat(model.answer().lines())
        .containsExactly("From: 3 EX", "Here: 5 EX", "Right part: " + right.typed());
    assertThat(model.answer().lit())
        .containsExactlyInAnyOrder(sample.spot("3EX"), sample.spot("5EX"));
    assertThat(model.stop()).isPresent();
  }

  @Test
  void theRightPartsBasketStandsOnTheStop() {
    new Handling(sample.job).offForWashing(sample.part("pushrod@5EX").item(), 4);
    fit("pushrod@3EX", "5EX");
    assertThat(model.answer().small())
        .isEqualTo("Pushrod. The right part is off for washing, basket 4.");
  }

  @Test
  void nothingButTheRightPartOrUndoMovesAStop() {
    fit("pushrod@3EX", "5EX");
    model.scan(sample.read("not a tag"));
    model.scan(sample.read(sample.action(Action.SKIP)));
    model.ask("Cover one.");
    assertThat(model.answer().headline()).isEqualTo("wrong place");
    assertThat(model.scan(sample.read(sample.tag("pushrod@5EX")))).contains(Cue.RIGHT);
    assertThat(model.stop()).isEmpty();
  }

  @Test
  void theWrongScanIsTakenBack() {
    fit("pushrod@3EX", "5EX");
    model.act(Action.UNDO);
    assertThat(model.stop()).isEmpty();
    assertThat(model.answer().headline()).isEqualTo("Taken back");
    assertThat(model.answer().small())
        .doesNotContain("Taken back")
        .endsWith("Nothing was fitted. Now scan the place card by the hole, or tap it.");
    assertThat(model.scan(sample.read(sample.card("3EX")))).contains(Cue.RIGHT);
  }

  @Test
  void afterUndoThePlaceIsSaidToBeAsItIs() {
    fit("pushrod@5EX", "5EX");
    fit("pushrod@3EX", "5EX");
    model.act(Action.UNDO);
    assertThat(model.answer().small())
        .contains(
            "Recorded as in: "
                + sample.part("pushrod@5EX").code(SampleJob.ENGINE).typed()
                + " in 5 EX pushrod.");
    model.act(Action.UNDO);
    assertThat(model.answer().small()).startsWith("The half that waited is dropped.");
    model.act(Action.UNDO);
    assertThat(model.answer().small())
        .endsWith("Recorded as empty: 5 EX pushrod. Scan a part or its place card.");
  }

  @Test
  void onPurposeNeedsAReason() {
    fit("pushrod@3EX", "5EX");
    assertThat(model.stopped().canFitOnPurpose()).isTrue();
    model.act(Action.YES);
    assertThat(model.stop()).isPresent();
    assertThat(model.trouble()).contains("Nothing is fitted.");
    model.chooseReason("matched pair");
    model.act(Action.YES);
    assertThat(model.stop()).isPresent();
    model.fitOnPurpose();
    assertThat(model.stop()).isEmpty();
    assertThat(sample.state("pushrod@5EX")).isEqualTo(PlaceState.OTHER_FITTED);
    assertThat(sample.state("pushrod@3EX")).isEqualTo(PlaceState.OPEN);
  }

  @Test
  void afterAFitOnPurposeTheStopIsGoneFromTheScreen() {
    fit("pushrod@3EX", "5EX");
    model.chooseReason("matched pair");
    model.fitOnPurpose();
    assertThat(model.answer().cue()).isEmpty();
    assertThat(model.answer().headline()).isEqualTo("Fitted on purpose");
    assertThat(model.answer().lines()).containsExactly("3 EX pushrod", "now in 5 EX");
    assertThat(model.answer().small()).contains("matched pair", "3 EX is open");
  }

  @Test
  void onceAReasonIsChosenTheScreenSaysWhatWillNoLongerBeMated() {
    fit("pushrod@3EX", "5EX");
    model.chooseReason("it is the straighter one");
    assertThat(model.answer().lines())
        .containsExactly(
            "Then no longer mated at 5 EX and 3 EX: pushrod, rocker, lifter.", "3 EX is open.");
    assertThat(model.answer().cue()).contains(Cue.STOP);
    assertThat(model.answer().lit())
        .containsExactlyInAnyOrder(sample.spot("3EX"), sample.spot("5EX"));
  }

  @Test
  void aReasonStandsOnTheStopAndNotInTheMessageBelow() {
    fit("pushrod@3EX", "5EX");
    model.chooseReason("measured better here");
    assertThat(model.reason()).contains("measured better here");
    assertThat(model.answer().lines().get(0)).startsWith("Then no longer mated at 5 EX and 3 EX");
    assertThat(model.trouble()).isEmpty();
  }

  @Test
  void aTagOfAnotherEngineCannotBeFittedOnPurpose() {
    model.scan(sample.read(new TagCode(TagType.PART, SampleJob.OTHER_ENGINE, 3, 1).digits()));
    assertThat(model.answer().lines().get(0)).isEqualTo("Tag of: Gray six");
    assertThat(model.stopped().canFitOnPurpose()).isFalse();
  }

  @Test
  void aForeignCodeHasItsOwnAnswerAndTheHalfThatWaitsIsNamed() {
    model.scan(sample.read(sample.tag("pushrod@3EX")));
    assertThat(model.scan(sample.read("4006381333931"))).contains(Cue.ASK);
    assertThat(model.answer().headline()).isEqualTo("not one of ours");
    assertThat(model.answer().small())
        .startsWith("This is not one of our tags.")
        .endsWith("Part in hand: 3 EX pushrod.");
    assertThat(model.scan(sample.read(sample.card("3EX")))).contains(Cue.RIGHT);
  }

  @Test
  void nothingThatIsScannedOrSaidLeavesTheLastRightPlaceStanding() {
    String typedWrong = sample.tag("pushrod@3EX").substring(0, 15) + "x";
    List<Runnable> others =
        List.of(
            () -> model.scan(sample.read("4006381333931")),
            () -> model.scan(sample.read(typedWrong)),
            () -> model.scan(sample.read("100000")),
            () ->
                model.scan(
                    sample.read(new TagCode(TagType.PART, SampleJob.ENGINE, 900, 1).digits())),
            () ->
                model.scan(
                    sample.read(new TagCode(TagType.PART, SampleJob.OTHER_ENGINE, 3, 1).digits())),
            () ->
                model.scan(
                    sample.read(new TagCode(TagType.BASKET, SampleJob.ENGINE, 2, 1).digits())),
            () -> model.scan(sample.read(sample.tag("pushrod@5EX"))),
            () -> model.scan(sample.read(sample.card("5EX"))),
            () -> model.act(Action.HELP),
            () -> model.act(Action.YES),
            () -> model.ask("Come closer."));
    for (Runnable other : others) {
      fit("lifter@3EX", "3EX");
      assertThat(model.answer().cue()).contains(Cue.RIGHT);
      assertThat(model.right()).map(right -> right.place().key()).contains("lifter@3EX");
      other.run();
      assertThat(model.right()).isEmpty();
      assertThat(model.answer().cue()).isNotEqualTo(Optional.of(Cue.RIGHT));
      assertThat(model.answer().lines()).doesNotContain("3 EX lifter");
      model.ask("");
      assertThat(model.right()).isEmpty();
      assertThat(model.answer().cue()).isNotEqualTo(Optional.of(Cue.RIGHT));
      while (sample.job.findLastStep().isPresent() && isFitted()) {
        model.act(Action.UNDO);
      }
    }
  }

  @Test
  void whatCannotBeWrittenLeavesNoRightPlaceStanding() {
    model.choose(FitMode.FOLLOW_THE_LIST);
    model.scan(sample.read(sample.tag("main-shell@M1U")));
    assertThat(model.right()).isPresent();
    sample.logbook.fail("The disk is full. Make room, then scan again.");
    model.scan(sample.read(sample.tag("main-shell@M2U")));
    assertThat(model.answer().headline()).isEqualTo("Not kept");
    assertThat(model.right()).isEmpty();
  }

  @Test
  void aRightPlaceStandsNoLongerThanItsPartSitsThere() {
    fit("lifter@3EX", "3EX");
    new Handling(sample.job).tookOut(sample.part("lifter@3EX").item(), "looked at again");
    assertThat(model.right()).isEmpty();
    assertThat(model.answer().cue()).isEmpty();
    assertThat(model.answer().lines()).isEmpty();
    fit("lifter@3EX", "3EX");
    sample.job.undo();
    assertThat(model.right()).isEmpty();
    assertThat(model.answer().cue()).isEmpty();
  }

  @Test
  void aRightPlaceStandsNoLongerThanNothingStandsAgainstItsPart() {
    fit("pushrod@3EX", "3EX");
    Subject pushrod = Subject.ofPart(sample.part("pushrod@3EX").item());
    new Inspecting(sample.job).answer(pushrod, "pushrod-roll", Look.FAIL, "");
    assertThat(sample.state("pushrod@3EX")).isEqualTo(PlaceState.FITTED_BUT);
    assertThat(model.right()).isEmpty();
    assertThat(model.answer().cue()).isEmpty();
  }

  @Test
  void aFitOnPurposeIsToldNoLongerThanItStands() {
    fit("pushrod@3EX", "5EX");
    model.chooseReason("matched pair");
    model.fitOnPurpose();
    new Handling(sample.job).tookOut(sample.part("pushrod@3EX").item(), "looked at again");
    assertThat(model.answer().headline()).isNotEqualTo("Fitted on purpose");
    assertThat(model.answer().lines()).isEmpty();
  }

  private boolean isFitted() {
    return sample.record("lifter@3EX").where().state().equals("fitted");
  }

  @Test
  void undoSaysWhatItWouldTakeBack() {
    assertThat(model.undone().words()).isEqualTo("main 5, lower shell came out");
    model.scan(sample.read(sample.tag("lifter@3EX")));
    assertThat(model.undone().words()).isEqualTo("the half that waits: 3 EX lifter");
    model.scan(sample.read(sample.card("3EX")));
    assertThat(model.undone().words()).isEqualTo("3 EX lifter fitted at 3 EX");
    model.scan(sample.read(sample.tag("pushrod@5EX")));
    model.scan(sample.read(sample.card("3EX")));
    assertThat(model.undone().words()).startsWith("5 EX pushrod: ");
    model.act(Action.UNDO);
    assertThat(model.answer().headline()).isEqualTo("Taken back");
    assertThat(model.undone().words()).isEqualTo("the half that waits: 5 EX pushrod");
    model.act(Action.UNDO);
    assertThat(model.undone().words()).isEqualTo("3 EX lifter fitted at 3 EX");
  }

  @Test
  void aSecondPartTakesTheFirstOnesPlaceAndAsks() {
    model.scan(sample.read(sample.tag("pushrod@3EX")));
    assertThat(model.scan(sample.read(sample.tag("pushrod@5EX")))).contains(Cue.ASK);
    assertThat(model.scan(sample.read(sample.card("5EX")))).contains(Cue.RIGHT);
  }

  @Test
  void onlyWhatBindsCanBeTurned() {
    fit("lifter@3EX", "3EX");
    assertThat(model.right().orElseThrow().canBeTurned()).isFalse();
    fit("pushrod@3EX", "3EX");
    assertThat(model.right().orElseThrow().canBeTurned()).isTrue();
    assertThat(model.leave(PutTogether::turned)).contains(Cue.STOP);
    assertThat(model.answer().lines())
        .containsExactly("Wrong end: 3 EX", "Bottom end is up", "Tagged end goes up");
    assertThat(model.scan(sample.read(sample.tag("pushrod@3EX")))).contains(Cue.RIGHT);
  }

  @Test
  void followTheListNamesTheNextPlaceBottomEndFirst() {
    model.choose(FitMode.FOLLOW_THE_LIST);
    assertThat(model.answer().headline()).isEqualTo("Next place");
    assertThat(model.answer().lines()).containsExactly("Main 1, upper shell");
    assertThat(model.scan(sample.read(sample.tag("main-shell@M1U")))).contains(Cue.RIGHT);
  }

  @Test
  void askingWhereAPartGoesLogsNothing() {
    int before = sample.job.history().size();
    model.choose(FitMode.WHERE_DOES_THIS_GO);
    model.scan(sample.read(sample.tag("pushrod@3EX")));
    assertThat(model.answer().lines()).containsExactly("3 EX pushrod");
    assertThat(model.here()).as("its place is ringed").contains(place("pushrod@3EX"));
    assertThat(model.tap(place("pushrod@5EX"))).contains(Cue.STOP);
    assertThat(model.stop()).as("nothing waits").isEmpty();
    assertThat(model.answer().lines()).contains("From: 3 EX");
    model.choose(FitMode.WHERE_DOES_THIS_GO);
    model.tap(place("pushrod@5EX"));
    assertThat(model.answer().small()).contains("cylinder 5, exhaust, pushrod");
    assertThat(sample.job.history()).hasSize(before);
  }

  @Test
  void aReplacedPartsTagStopsAndItsNewPartFits() {
    String old = sample.tag("pushrod@3EX");
    assertThat(
            new MissingModel(sample.job)
                .replace(sample.part("pushrod@3EX"), "worn out", NewPart.LIKE_THE_OLD))
        .contains(75);
    model.scan(sample.read(old));
    assertThat(model.scan(sample.read(sample.card("3EX")))).contains(Cue.STOP);
    assertThat(model.answer().headline()).isEqualTo("retired");
    assertThat(model.scan(sample.read(sample.tag("pushrod@3EX")))).contains(Cue.RIGHT);
  }

  @Test
  void whatCannotBeWrittenIsSaidAndDoesNotCount() {
    sample.logbook.fail("The disk is full. Make room, then scan again.");
    model.scan(sample.read(sample.tag("pushrod@3EX")));
    model.scan(sample.read(sample.card("3EX")));
    assertThat(model.answer().headline()).isEqualTo("Not kept");
    assertThat(model.answer().small()).isEqualTo("The disk is full. Make room, then scan again.");
    assertThat(new ToFit(sample.job).places().size()).isEqualTo(74);
    sample.logbook.fail("");
    assertThat(model.scan(sample.read(sample.card("3EX")))).contains(Cue.RIGHT);
  }

  @Test
  void aStopThatCannotBeTakenBackStands() {
    fit("pushrod@3EX", "5EX");
    sample.logbook.fail("The disk is full. Make room, then scan again.");
    assertThat(model.act(Action.UNDO)).contains(Cue.ASK);
    assertThat(model.stop()).isPresent();
    assertThat(model.answer().headline()).isEqualTo("wrong place");
    assertThat(model.trouble()).isEqualTo("The disk is full. Make room, then scan again.");
    sample.logbook.fail("");
    model.act(Action.UNDO);
    assertThat(model.stop()).isEmpty();
  }

  @Test
  void aStopThatCannotBeSolvedForWantOfRoomStands() {
    model.scan(sample.read(new TagCode(TagType.PART, SampleJob.OTHER_ENGINE, 3, 1).digits()));
    assertThat(model.stop()).isPresent();
    sample.logbook.fail("The disk is full. Make room, then scan again.");
    model.scan(sample.read(sample.tag("pushrod@3EX")));
    assertThat(sample.job.state().standingStop()).isPresent();
    assertThat(model.stop()).isPresent();
    sample.logbook.fail("");
    model.scan(sample.read(sample.tag("pushrod@3EX")));
    assertThat(sample.job.state().standingStop()).isEmpty();
    assertThat(model.stop()).isEmpty();
  }

  private static Place place(String key) {
    return Place.find(key).orElseThrow();
  }

  @Test
  void aPartThatCannotGoInNowSaysSoAtOnce() {
    new Handling(sample.job).offForWashing(sample.part("pushrod@3EX").item(), 2);
    assertThat(model.scan(sample.read(sample.tag("pushrod@3EX")))).contains(Cue.ASK);
    assertThat(model.halves().orElseThrow().place().large()).isEqualTo("Not yet: washing");
    model.scan(sample.read(sample.tag("pushrod@5EX")));
    assertThat(model.dueHalves().place().large()).isEqualTo("Now scan the place card");
  }

  @Test
  void aSlipLeavesTheRingAndTheWayRoundOfWhatWaits() {
    model.scan(sample.read(sample.tag("pushrod@3EX")));
    model.scan(sample.read("0012 47"));
    assertThat(model.halves()).isEmpty();
    assertThat(model.here()).contains(place("pushrod@3EX"));
    assertThat(model.dueHalves().held()).contains(sample.part("pushrod@3EX"));
    assertThat(model.dueHalves().question()).isEqualTo("A tap tries the 3 EX pushrod");
  }

  @Test
  void aCodeThatTheStopShowsIsNoProofOfWhatIsInTheHand() {
    model.scan(sample.read(sample.tag("pushrod@3EX")));
    assertThat(CopiedCode.isShown(model, sample.read(sample.tag("pushrod@5EX")))).isFalse();
    model.scan(sample.read(sample.card("5EX")));
    assertThat(CopiedCode.isShown(model, sample.read(sample.tag("pushrod@5EX")))).isTrue();
    assertThat(CopiedCode.isShown(model, sample.read(sample.tag("pushrod@7EX")))).isFalse();
  }

  @Test
  void aPlaceCardProposesWhatGoesInNext() {
    model.scan(sample.read(sample.card("3EX")));
    assertThat(model.here()).as("under rocker and pushrod").contains(place("lifter@3EX"));
  }
}
