package wherefrom.job.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.BenchJob;
import wherefrom.job.change.Planning;
import wherefrom.job.decide.Deciding;
import wherefrom.job.money.Replacement;
import wherefrom.job.puttogether.Fitting;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.rules.debris.DebrisLook;
import wherefrom.rules.debris.DebrisPlace;
import wherefrom.rules.debris.Opening;
import wherefrom.rules.debris.ReachedMains;

class InspectingTest {
  private final BenchJob bench = BenchJob.v8();
  private final Inspecting inspecting = new Inspecting(bench.job);
  private final Deciding deciding = new Deciding(bench.job);

  private Subject part(String place) {
    return Subject.ofPart(bench.item(place));
  }

  private void all(String place, Look look) {
    inspecting
        .cards(part(place))
        .forEach(card -> inspecting.answer(part(place), card.check().key(), look, ""));
  }

  @Test
  void aLaterLookReplacesAnEarlierOneWithItsNote() {
    inspecting.answer(part("pushrod@3EX"), "pushrod-roll", Look.SUSPECT, "flickers");
    inspecting.answer(part("pushrod@3EX"), "pushrod-roll", Look.PASS, "it was dirt");
    CheckCard card = inspecting.cards(part("pushrod@3EX")).get(0);
    assertThat(card.look()).isEqualTo(Look.PASS);
    assertThat(card.note()).isEqualTo("it was dirt");
  }

  /** No look is about a bag or a big part: it is said, and no program ends by it. */
  @Test
  void aBagHasNoTests() {
    assertThat(inspecting.cards(Subject.ofBag(1))).isEmpty();
    assertThat(inspecting.answer(Subject.ofBigPart(1), "pushrod-roll", Look.PASS, ""))
        .isEqualTo(new Inspecting.Answer.Refused("There is no test \"pushrod-roll\" for this."));
  }

  @Test
  void whoGaveAReasonForABadFindingDidNotKnowOfALaterDoubt() {
    Part pushrod = bench.part("pushrod@3EX");
    bench.look("pushrod@3EX", "pushrod-roll", Look.SUSPECT);
    new Fitting(bench.job).fitOnPurpose(pushrod, pushrod.home().spot(), "to mock it up");
    assertThat(bench.word("pushrod@3EX")).isEqualTo("already fitted");
    bench.look("pushrod@3EX", "pushrod-ends", Look.SUSPECT);
    assertThat(bench.word("pushrod@3EX")).isEqualTo("fitted, but");
  }

  @Test
  void anAnswerSaysAtOnceWhatFollowsFromIt() {
    Inspecting.Answer answer =
        inspecting.answer(part("rod-shell@R3L"), "rod-shell-face", Look.FAIL, "copper");
    assertThat(((Inspecting.Answer.Kept) answer).follows())
        .extracting(rule -> rule.consequence().rule())
        .contains("R22");
  }

  @Test
  void whatNobodyLookedAtGetsShorterByWhatWasAnswered() {
    int before = inspecting.listUnlooked().size();
    all("pushrod@3EX", Look.PASS);
    assertThat(inspecting.listUnlooked()).hasSize(before - 1);
    inspecting.answer(part("pushrod@3EX"), "pushrod-roll", Look.NOT_LOOKED, "");
    assertThat(inspecting.listUnlooked()).hasSize(before);
  }

  @Test
  void shellsAndPistonsAreLookedAtBeforeTheyAreWashed() {
    assertThat(inspecting.listBeforeWashing())
        .extracting(Inspecting.Unlooked::words)
        .contains("rod 3, lower shell", "cylinder 3, piston")
        .doesNotContain("cylinder 3, exhaust, pushrod");
  }

  @Test
  void aTestOfAnotherKindAndAFeatureThatTheEngineHasNotAreRefused() {
    assertThat(inspecting.answer(part("pushrod@3EX"), "lobe-look", Look.PASS, ""))
        .isInstanceOf(Inspecting.Answer.Refused.class);
    assertThat(
            inspecting.answer(
                new Subject.AFeature(Feature.LOBE, "9EX"), "lobe-look", Look.PASS, ""))
        .isEqualTo(
            new Inspecting.Answer.Refused("This engine has no cylinder 9, exhaust, cam lobe."));
  }

  @Test
  void aPartThatPassedEverythingIsProposedForReuseAndOneUnlookedIsNot() {
    assertThat(deciding.propose(bench.item("pushrod@3EX")).decision()).isEmpty();
    assertThat(deciding.propose(bench.item("pushrod@3EX")).reasons().get(0).sentence())
        .startsWith("Not inspected yet");
    all("pushrod@3EX", Look.PASS);
    assertThat(deciding.propose(bench.item("pushrod@3EX")).decision()).contains(Decision.REUSE);
  }

  @Test
  void aFailedValveIsProposedForMachiningAndAFailedRockerForReplacing() {
    all("valve@3EX", Look.FAIL);
    all("rocker@3EX", Look.FAIL);
    assertThat(deciding.propose(bench.item("valve@3EX")).decision()).contains(Decision.MACHINE);
    assertThat(deciding.propose(bench.item("rocker@3EX")).decision()).contains(Decision.REPLACE);
  }

  @Test
  void oneFailedLifterProposesTheSet() {
    assertThat(deciding.proposeSet(PartKind.LIFTER)).isEmpty();
    all("lifter@3EX", Look.FAIL);
    assertThat(deciding.proposeSet(PartKind.LIFTER).orElseThrow().decision())
        .isEqualTo(Decision.REPLACE);
    assertThat(deciding.proposeSet(PartKind.VALVE)).isEmpty();
  }

  @Test
  void aForbiddenPartCannotBeDecidedForReuse() {
    new Planning(bench.job)
        .make(
            wherefrom.rules.consequence.Change.of(
                wherefrom.rules.consequence.ChangeKind.NEW_FLAT_CAM));
    Deciding.Answer answer = deciding.decide(bench.item("lifter@3EX"), Decision.REUSE, "");
    assertThat(answer).isInstanceOf(Deciding.Answer.Refused.class);
    assertThat(deciding.replacements())
        .filteredOn(line -> line.kind() == PartKind.LIFTER)
        .extracting(Replacement::pieces)
        .containsExactly(16);
  }

  @Test
  void theUndecidedListEndsWhenEveryPartIsDecided() {
    assertThat(deciding.listUndecided()).isEmpty();
    deciding.askEveryPart(true);
    assertThat(deciding.listUndecided()).hasSize(bench.job.state().parts().size());
    bench.reuseAll();
    assertThat(deciding.listUndecided()).isEmpty();
  }

  @Test
  void whetherItReachedTheMainsIsAnsweredByLooksAtBearingsAlone() {
    // TM 5-3895-346-14: the lower main shells tell, one cap at a time.
    DebrisBook debris = new DebrisBook(bench.job);
    assertThat(debris.map().mains()).isEqualTo(ReachedMains.NOTHING_FOUND);
    debris.found(DebrisPlace.PAN, DebrisLook.PLASTIC, "three crumbs");
    debris.opened(Opening.FRONT_COVER, Look.FAIL, "teeth gone");
    debris.opened(Opening.FILTER, Look.PASS, "clean pleats");
    assertThat(debris.map().openings()).doesNotContain(Opening.FRONT_COVER);
    assertThat(debris.map().mains()).isEqualTo(ReachedMains.OPEN);
    bench.look("main-shell@M1L", "main-shell-face", Look.PASS);
    bench.look("main-shell@M5L", "main-shell-face", Look.PASS);
    bench.look("main-shell@M3U", "main-shell-face", Look.PASS);
    assertThat(debris.map().question().wanted())
        .containsExactly("a rod shell of each crank pin: 4 to go");
    for (int rod = 1; rod <= 4; rod++) {
      bench.look("rod-shell@R" + rod + "L", "rod-shell-face", Look.PASS);
    }
    assertThat(debris.map().mains()).isEqualTo(ReachedMains.NO);
    assertThat(debris.map().question().answeredBy()).contains("main 5, lower shell: pass");
    bench.look("main-shell@M5L", "main-shell-face", Look.SUSPECT);
    assertThat(debris.map().mains()).isEqualTo(ReachedMains.OPEN);
    bench.look("main-shell@M5L", "main-shell-face", Look.FAIL);
    assertThat(debris.map().mains()).isEqualTo(ReachedMains.YES);
  }

  @Test
  void aLookAtTheOpenedBearingsAnswersTooAndCopperWantsAllOfThem() {
    DebrisBook debris = new DebrisBook(bench.job);
    debris.found(DebrisPlace.PAN, DebrisLook.MAGNETIC_FLAKES, "");
    debris.opened(Opening.FIRST_BEARINGS, Look.PASS, "even gray");
    assertThat(debris.map().question().answeredBy())
        .containsExactly("A few bearings (even gray): pass");
    debris.found(DebrisPlace.FILTER_PLEATS, DebrisLook.COPPER, "");
    assertThat(debris.map().question().wanted()).contains("main 3, lower shell", "rod 8, a shell");
    debris.opened(Opening.ALL_BEARINGS, Look.FAIL, "copper on main 3");
    assertThat(debris.map().mains()).isEqualTo(ReachedMains.YES);
  }

  @Test
  void aFailedLobeAsksTheQuestionToo() {
    bench.record(
        new wherefrom.job.entry.FeatureLooked("lobe@3EX", "lobe-look", Look.FAIL, "pitted"));
    assertThat(new DebrisBook(bench.job).map().question().openedBy())
        .containsExactly("cam lobe failed, cylinder 3, exhaust");
  }

  @Test
  void harmfulDebrisHoldsTheShellsUntilJournalsAndGalleriesAreSeen() {
    // R22, TM 9-2815-237-34: after debris journals, galleries, pump and filter are looked at.
    bench.reuseAll();
    new DebrisBook(bench.job).found(DebrisPlace.PAN, DebrisLook.GREY_PASTE, "");
    assertThat(bench.word("main-shell@M2L")).isEqualTo("right place");
    new DebrisBook(bench.job).found(DebrisPlace.PAN, DebrisLook.SWARF, "");
    assertThat(bench.verdict("main-shell@M2L").sentence()).contains("a check is open (rule 22)");
    Planning planning = new Planning(bench.job);
    planning.answer("R22:journals", Look.PASS, "");
    planning.answer("R22:galleries", Look.PASS, "");
    assertThat(bench.word("main-shell@M2L")).isEqualTo("right place");
  }

  @Test
  void aProposalIsNoDecision() {
    all("pushrod@3EX", Look.PASS);
    deciding.askEveryPart(true);
    deciding.propose(bench.item("pushrod@3EX"));
    assertThat(bench.job.state().bench().findDecision(bench.item("pushrod@3EX")))
        .isEqualTo(Optional.empty());
    assertThat(bench.word("pushrod@3EX")).isEqualTo("not cleared");
  }
}
