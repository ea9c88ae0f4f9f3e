package wherefrom.job.puttogether;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wherefrom.job.Benches.part;
import static wherefrom.job.Benches.place;
import static wherefrom.job.Benches.spot;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.job.Benches;
import wherefrom.job.OpenJob;
import wherefrom.job.PlaceState;
import wherefrom.job.decide.Deciding;
import wherefrom.job.entry.BackFromShop;
import wherefrom.job.entry.BackFromWashing;
import wherefrom.job.entry.DecisionMade;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.entry.PartLost;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.PartSort;
import wherefrom.job.entry.PiecesCounted;
import wherefrom.job.entry.SentToShop;
import wherefrom.rules.Attempt;
import wherefrom.rules.Cue;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictName;
import wherefrom.rules.consequence.ShopWork;

class FittingTest {
  private final OpenJob job = Benches.apart();
  private final Fitting fitting = new Fitting(job);

  private Verdict fit(String partFrom, String spotKey) {
    return fitting.fit(part(job, partFrom), spot(spotKey), false);
  }

  @Test
  void aPartGoesBackWhereItCameFrom() {
    Verdict verdict = fit("pushrod@3EX", "3EX");
    assertThat(verdict.word()).isEqualTo("right place");
    assertThat(verdict.stops()).isFalse();
    assertThat(verdict.wayOut()).isEqualTo("The tagged end goes up.");
    assertThat(job.state().findFitted(place("pushrod@3EX"))).contains(part(job, "pushrod@3EX"));
  }

  /** The first stop hides that it is turned; the reason covers what was said, not more. */
  @Test
  void whatGoesInTurnedAgainstAnotherStopIsKnownToBeTurned() {
    Attempt turned = new Attempt(part(job, "pushrod@3EX"), spot("5EX"), true);
    assertThat(fitting.fitOnPurpose(turned, "matched pair").name())
        .isEqualTo(VerdictName.WRONG_PLACE);
    Verdict said = fitting.judge(turned);
    assertThat(said.name()).isEqualTo(VerdictName.FITTED_BUT);
    assertThat(((Verdict.FittedBut) said).against().name()).isEqualTo(VerdictName.WRONG_END);
    job.undo();
    assertThat(job.state().fitted()).isEmpty();
  }

  @Test
  void anotherPlaceIsStoppedAndBothPartsAreNamed() {
    Verdict verdict = fit("pushrod@3EX", "5EX");
    assertThat(verdict.word()).isEqualTo("wrong place");
    assertThat(verdict.cue()).isEqualTo(Cue.STOP);
    assertThat(verdict.sentence())
        .isEqualTo(
            "This came from cylinder 3, exhaust, pushrod. You are at cylinder 5, exhaust,"
                + " pushrod.");
    assertThat(verdict.wayOut()).contains("The right part is number");
    assertThat(job.state().fitted()).isEmpty();
    assertThat(job.state().standingStop()).isPresent();
  }

  @Test
  void theSameSpotHoldsAPushrodAndALifter() {
    assertThat(fit("pushrod@3EX", "3EX").stops()).isFalse();
    assertThat(fit("lifter@3EX", "3EX").stops()).isFalse();
    assertThat(fit("rocker@3EX", "3EX").stops()).isFalse();
  }

  @Test
  void aRodShellAtAMainIsTheWrongKind() {
    assertThat(fit("rod-shell@R3U", "M3U").word()).isEqualTo("wrong kind");
    assertThat(fit("pushrod@3EX", "R3U").word()).isEqualTo("wrong kind");
  }

  @Test
  void anUpperShellAtALowerPlaceIsTheWrongHalf() {
    assertThat(fit("main-shell@M2U", "M2L").word()).isEqualTo("wrong half");
    assertThat(fit("rod-shell@R1L", "R1U").word()).isEqualTo("wrong half");
    assertThat(fit("main-shell@M2U", "M4L").word()).isEqualTo("wrong half");
  }

  @Test
  void aTurnedPushrodIsTheWrongEnd() {
    Verdict verdict = fitting.fit(part(job, "pushrod@1IN"), spot("1IN"), true);
    assertThat(verdict.word()).isEqualTo("wrong end");
    assertThat(job.state().fitted()).isEmpty();
  }

  @Test
  void aFlatLifterMaySpinSoItHasNoEnd() {
    assertThat(fitting.fit(part(job, "lifter@1IN"), spot("1IN"), true).word())
        .isEqualTo("right place");
  }

  @Test
  void aPlaceThatIsTakenNamesBothParts() {
    fit("pushrod@3EX", "3EX");
    Verdict verdict = fit("pushrod@5EX", "3EX");
    assertThat(verdict.word()).isEqualTo("place taken");
    assertThat(verdict.sentence()).contains("cylinder 3, exhaust").contains("cylinder 5, exhaust");
  }

  @Test
  void scannedAgainWhereItIsItIsAlreadyDone() {
    fit("pushrod@3EX", "3EX");
    Verdict verdict = fit("pushrod@3EX", "3EX");
    assertThat(verdict.word()).isEqualTo("already fitted");
    assertThat(verdict.stops()).isFalse();
  }

  @Test
  void fittedElsewhereItIsStopped() {
    fit("pushrod@3EX", "3EX");
    Verdict verdict = fit("pushrod@3EX", "5EX");
    assertThat(verdict.word()).isEqualTo("already fitted");
    assertThat(verdict.stops()).isTrue();
  }

  @Test
  void aPartThatIsAwayIsNotCleared() {
    int item = part(job, "pushrod@3EX").item();
    job.record(new OffForWashing(item, 4));
    assertThat(fit("pushrod@3EX", "3EX").sentence()).contains("off for washing (basket 4)");
    job.record(new BackFromWashing(item));
    job.record(new SentToShop(1, List.of(item), "check straightness", ShopWork.OTHER));
    assertThat(fit("pushrod@3EX", "3EX").sentence()).contains("machine shop (visit 1)");
    job.record(new BackFromShop(1, List.of(item), "straight"));
    assertThat(fit("pushrod@3EX", "3EX").word()).isEqualTo("right place");
    job.record(new PartLost(part(job, "pushrod@5EX").item(), ""));
    assertThat(fit("pushrod@5EX", "5EX").word()).isEqualTo("not cleared");
  }

  @Test
  void aFailedPartIsNotClearedUntilItIsDecided() {
    int item = part(job, "pushrod@3EX").item();
    job.record(new LookRecorded(item, "straight", Look.FAIL, ""));
    assertThat(fit("pushrod@3EX", "3EX").word()).isEqualTo("not cleared");
    job.record(new DecisionMade(item, Decision.REUSE, "measured again"));
    assertThat(fit("pushrod@3EX", "3EX").word()).isEqualTo("right place");
  }

  @Test
  void aJobThatAsksForEveryDecisionStopsWhatHasNone() {
    job.record(new DecisionMade(part(job, "pushrod@3EX").item(), Decision.REUSE, "fine"));
    assertThat(fit("pushrod@1IN", "1IN").stops()).isFalse();
    new Deciding(job).askEveryPart(true);
    assertThat(fit("pushrod@3EX", "3EX").stops()).isFalse();
    assertThat(fit("pushrod@5EX", "5EX").sentence()).contains("nothing is decided");
  }

  @Test
  void aPartToBeMachinedWaitsForTheShopAndANewDecision() {
    int item = part(job, "rocker@3EX").item();
    job.record(new DecisionMade(item, Decision.MACHINE, "tip worn"));
    assertThat(fit("rocker@3EX", "3EX").word()).isEqualTo("not cleared");
    job.record(new SentToShop(1, List.of(item), "reface", ShopWork.OTHER));
    job.record(new BackFromShop(1, List.of(item), "refaced"));
    assertThat(job.state().bench().findDecision(item)).isEmpty();
    job.record(new DecisionMade(item, Decision.REUSE, "refaced"));
    assertThat(fit("rocker@3EX", "3EX").word()).isEqualTo("right place");
  }

  @Test
  void aReplacedPartIsRetiredAndItsReplacementFits() {
    int old = part(job, "pushrod@3EX").item();
    job.record(new PartReplaced(old, job.nextItem(), "bent", Optional.empty(), PartSort.SAME));
    Verdict verdict = fitting.fit(job.state().getPart(old).part(), spot("3EX"), false);
    assertThat(verdict.word()).isEqualTo("retired");
    assertThat(verdict.wayOut()).contains("0075");
    assertThat(fit("pushrod@3EX", "3EX").word()).isEqualTo("right place");
  }

  @Test
  void onPurposeNeedsAReasonAndIsRecorded() {
    assertThatThrownBy(() -> fitting.fitOnPurpose(part(job, "pushrod@3EX"), spot("5EX"), " "))
        .hasMessageContaining("Say why");
    fitting.fitOnPurpose(part(job, "pushrod@3EX"), spot("5EX"), "matched pair");
    assertThat(job.state().onPurpose())
        .singleElement()
        .satisfies(
            fitted -> {
              assertThat(fitted.against()).contains(VerdictName.WRONG_PLACE);
              assertThat(fitted.onPurpose()).isEqualTo("matched pair");
            });
    assertThat(job.state().state(place("pushrod@5EX"))).isEqualTo(PlaceState.OTHER_FITTED);
    assertThat(job.state().state(place("pushrod@3EX"))).isEqualTo(PlaceState.OPEN);
    assertThat(new ToFit(job).places()).contains(place("pushrod@3EX"));
  }

  @Test
  void onPurposeIntoATakenPlaceTakesTheOtherOut() {
    fit("pushrod@5EX", "5EX");
    fitting.fitOnPurpose(part(job, "pushrod@3EX"), spot("5EX"), "measured better here");
    assertThat(job.state().findFitted(place("pushrod@5EX"))).contains(part(job, "pushrod@3EX"));
    assertThat(job.state().findFittedAt(part(job, "pushrod@5EX").item())).isEmpty();
    assertThat(job.state().whereabouts(part(job, "pushrod@5EX").item()).words()).contains("out");
  }

  @Test
  void onPurposeCannotMeanAnotherKindOfPlace() {
    assertThatThrownBy(() -> fitting.fitOnPurpose(part(job, "pushrod@3EX"), spot("M1U"), "because"))
        .hasMessageContaining("cannot be fitted");
  }

  @Test
  void aSetOnOneWireIsCounted() {
    int item = part(job, "rocker@3EX").item();
    job.record(new PiecesCounted(item, 3));
    assertThat(fit("rocker@3EX", "3EX").wayOut()).startsWith("All 3 pieces of the set.");
  }
}
