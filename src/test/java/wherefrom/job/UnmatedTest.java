package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.handling.Handling;
import wherefrom.job.puttogether.FitOutcome;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.job.puttogether.ToFit;
import wherefrom.parts.Action;
import wherefrom.parts.Place;
import wherefrom.ui.sample.SampleJob;

/** A part is fitted on purpose where it does not come from. */
class UnmatedTest {
  private final SampleJob sample = SampleJob.apart();
  private final PutTogether together = new PutTogether(sample.job);

  private void stop(String part, String spot) {
    together.scan(sample.read(sample.tag(part)));
    together.scan(sample.read(sample.card(spot)));
  }

  private void onPurpose(String part, String spot) {
    stop(part, spot);
    together.fitOnPurpose("matched pair");
  }

  private static String said(FitOutcome step) {
    return step instanceof FitOutcome.FittedOnPurpose fitted
        ? fitted.sentence()
        : ((FitOutcome.Said) step).sentence();
  }

  private List<String> unmated() {
    return Unmated.all(sample.job.state()).stream()
        .flatMap(what -> what.places().stream())
        .map(Place::key)
        .sorted()
        .toList();
  }

  private static Place place(String key) {
    return Place.find(key).orElseThrow();
  }

  @Test
  void beforeItIsKeptThePersonIsToldWhatIsNoLongerMatedAndWhatStaysOpen() {
    stop("pushrod@5EX", "3EX");
    assertThat(said(together.chooseReason("measured better here")))
        .isEqualTo(
            "Reason: measured better here. Nothing is fitted yet: hold the key. No longer mated at 3 EX and 5 EX:"
                + " pushrod, rocker, lifter. 5 EX is open.");
    assertThat(unmated()).isEmpty();
    assertThat(
            ((FitOutcome.FittedOnPurpose) together.fitOnPurpose("measured better here")).sentence())
        .startsWith("Fitted on purpose: ")
        .endsWith("No longer mated at 3 EX and 5 EX: pushrod, rocker, lifter. 5 EX is open.");
  }

  @Test
  void theMatesOfBothPlacesAreFlaggedForAsLongAsItSitsThere() {
    onPurpose("pushrod@5EX", "3EX");
    assertThat(unmated())
        .containsExactly(
            "lifter@3EX", "lifter@5EX", "pushrod@3EX", "pushrod@5EX", "rocker@3EX", "rocker@5EX");
    together.act(Action.UNDO);
    assertThat(unmated()).isEmpty();
  }

  @Test
  void aLifterLeavesItsLobe() {
    stop("lifter@5EX", "3EX");
    assertThat(together.unmates().orElseThrow().mates())
        .isEqualTo("No longer mated at 3 EX and 5 EX: lifter, pushrod, cam lobe, lifter bore.");
  }

  @Test
  void theRobbedPlaceIsOpenAndCountsAsMissing() {
    ToFit missing = new ToFit(sample.job);
    int before = missing.places().size();
    onPurpose("pushrod@5EX", "3EX");
    assertThat(sample.job.state().state(place("pushrod@5EX"))).isEqualTo(PlaceState.OPEN);
    assertThat(sample.job.state().state(place("pushrod@3EX"))).isEqualTo(PlaceState.OTHER_FITTED);
    assertThat(missing.places()).contains(place("pushrod@5EX")).hasSize(before - 1);
  }

  @Test
  void aRobbedPlaceThatAnotherPartFillsIsNotCalledOpen() {
    onPurpose("pushrod@5EX", "3EX");
    stop("pushrod@3EX", "5EX");
    assertThat(together.unmates().orElseThrow().opened()).isEmpty();
  }

  @Test
  void aPartFittedAgainstAStopAtItsOwnPlaceKeepsItsMates() {
    new Handling(sample.job).offForWashing(sample.part("pushrod@3EX").item(), 4);
    stop("pushrod@3EX", "3EX");
    assertThat(together.stop().orElseThrow().word()).isEqualTo("not cleared");
    assertThat(together.unmates()).isEmpty();
    together.fitOnPurpose("it is dry");
    assertThat(sample.job.state().onPurpose()).hasSize(1);
    assertThat(unmated()).isEmpty();
  }

  @Test
  void whatIsTakenOutAgainIsAskedForAtItsOwnPlace() {
    onPurpose("pushrod@5EX", "3EX");
    new Handling(sample.job).tookOut(sample.part("pushrod@5EX").item(), "taken out again");
    assertThat(unmated()).isEmpty();
    assertThat(new ToFit(sample.job).places()).contains(place("pushrod@3EX"), place("pushrod@5EX"));
  }
}
