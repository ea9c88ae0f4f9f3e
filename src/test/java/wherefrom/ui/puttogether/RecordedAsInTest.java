package wherefrom.ui.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.job.PlaceState;
import wherefrom.job.puttogether.Fitting;
import wherefrom.parts.Action;
import wherefrom.parts.Place;
import wherefrom.ui.sample.SampleJob;

/** A part is scanned that is recorded as fitted: one of the two is not so. */
class RecordedAsInTest {
  private static final Place OWN = Place.find("rocker@3IN").orElseThrow();
  private static final Place OTHER = Place.find("rocker@5IN").orElseThrow();

  private final SampleJob sample = SampleJob.apart();
  private final PutTogetherModel model = new PutTogetherModel(sample.job);

  private void scan(String code) {
    model.scan(sample.read(code));
  }

  private void fitElsewhere() {
    new Fitting(sample.job).fitOnPurpose(sample.part("rocker@3IN"), OTHER.spot(), "matched pair");
  }

  private void fitAtHome() {
    new Fitting(sample.job).fit(sample.part("rocker@3IN"), OWN.spot(), false);
  }

  /** The place where it is, not the one that it came out of. */
  @Test
  void whereItIsRecordedIsSaidAndRinged() {
    fitElsewhere();
    scan(sample.tag("rocker@3IN"));
    assertThat(model.dueHalves().place().large()).isEqualTo("Recorded as in: 5 IN");
    assertThat(model.here()).contains(OTHER);
    assertThat(model.recordedAsIn()).contains(sample.part("rocker@3IN"));
  }

  @Test
  void whoeverHoldsItSaysSoAndItWaitsForItsPlace() {
    fitElsewhere();
    scan(sample.tag("rocker@3IN"));
    model.hold();
    assertThat(model.trouble()).isEqualTo("Recorded as empty: 5 IN. Look what sits there.");
    assertThat(sample.job.state().findFitted(OTHER)).isEmpty();
    assertThat(model.recordedAsIn()).isEmpty();
    assertThat(model.here()).contains(OWN);
    scan(sample.card("3IN"));
    assertThat(sample.state("rocker@3IN")).isEqualTo(PlaceState.FITTED);
  }

  /** The same where its place was named, and it is recorded there. */
  @Test
  void alsoWhereItIsAlreadyFittedHere() {
    fitAtHome();
    scan(sample.tag("rocker@3IN"));
    scan(sample.card("3IN"));
    assertThat(model.answer().headline()).isEqualTo("already fitted");
    assertThat(model.right().flatMap(RightModel::alreadyIn)).isPresent();
    model.hold();
    assertThat(sample.job.state().findFitted(OWN)).isEmpty();
    assertThat(model.dueHalves().held()).contains(sample.part("rocker@3IN"));
  }

  @Test
  void undoDropsTheHalfAndThenHasItInAgain() {
    fitAtHome();
    scan(sample.tag("rocker@3IN"));
    model.hold();
    model.act(Action.UNDO);
    model.act(Action.UNDO);
    assertThat(sample.job.state().findFitted(OWN)).contains(sample.part("rocker@3IN"));
  }

  /** A part that was just fitted went in by this very scan: there is nothing to put right. */
  @Test
  void aRightPlaceDoesNotOfferIt() {
    scan(sample.tag("rocker@3IN"));
    scan(sample.card("3IN"));
    assertThat(model.recordedAsIn()).isEmpty();
  }
}
