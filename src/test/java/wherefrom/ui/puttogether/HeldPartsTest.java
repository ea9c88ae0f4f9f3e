package wherefrom.ui.puttogether;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.puttogether.FitMode;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.job.puttogether.ToFit;
import wherefrom.job.shelf.NextDeed;
import wherefrom.job.shelf.Standing;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.VerdictName;
import wherefrom.ui.sample.SampleJob;

/** What is offered as next can go in, and a right place says what it does not speak of. */
class HeldPartsTest {
  private final SampleJob sample = SampleJob.apart();
  private final PutTogetherModel model = new PutTogetherModel(sample.job);

  private static Place place(String key) {
    return Place.find(key).orElseThrow();
  }

  private void fail(String placeKey) {
    Part part = sample.part(placeKey);
    new Inspecting(sample.job).answer(Subject.ofPart(part.item()), checkOf(part), Look.SUSPECT, "");
  }

  private String checkOf(Part part) {
    return new Inspecting(sample.job).cards(Subject.ofPart(part.item())).get(0).check().key();
  }

  @Test
  void theListPassesAPartThatWouldBeStoppedAndSaysWhy() {
    PutTogether together = new PutTogether(sample.job);
    together.choose(FitMode.FOLLOW_THE_LIST);
    Place first = together.target().orElseThrow();
    Part part = sample.job.state().findOwner(first).orElseThrow();
    fail(first.key());
    assertThat(together.target()).isPresent().isNotEqualTo(Optional.of(first));
    List<ToFit.Held> held = new ToFit(sample.job).held();
    assertThat(held).extracting(ToFit.Held::part).contains(part);
    assertThat(held.get(0).why().name()).isEqualTo(VerdictName.NOT_CLEARED);
  }

  @Test
  void theFirstScreenOffersNoneThatWouldBeStopped() {
    Place first = next().place().orElseThrow();
    fail(first.key());
    assertThat(next().kind()).isEqualTo(NextDeed.Kind.FIT);
    assertThat(next().place()).isNotEqualTo(Optional.of(first));
  }

  /** Where all are held the first of them is named with what holds it. */
  @Test
  void whereAllAreHeldTheReasonIsNamed() {
    for (Place place : new ToFit(sample.job).places()) {
      fail(place.key());
    }
    assertThat(next().kind()).isEqualTo(NextDeed.Kind.HELD);
    assertThat(next().words()).isEqualTo("not cleared");
    PutTogether together = new PutTogether(sample.job);
    together.choose(FitMode.FOLLOW_THE_LIST);
    assertThat(together.target()).isEmpty();
  }

  private NextDeed next() {
    Part fitted = sample.part("rocker@8EX");
    if (sample.job.state().findFittedAt(fitted.item()).isEmpty()) {
      sample.job.record(new PartFitted(fitted.item(), fitted.home()));
    }
    return NextDeed.of(sample.job, Standing.of(sample.job), OutOrder.CYLINDER);
  }

  @Test
  void aRightPlaceSaysWhatIsStillToGoInUnderItAndThatNobodyLooked() {
    fit("rocker@3EX");
    assertThat(model.right().orElseThrow().notice())
        .isEqualTo("Not in yet: lifter, pushrod. Nobody looked at this rocker.");
    Subject lifter = Subject.ofPart(sample.part("lifter@3EX").item());
    String check = checkOf(sample.part("lifter@3EX"));
    new Inspecting(sample.job).answer(lifter, check, Look.PASS, "");
    fit("lifter@3EX");
    assertThat(model.right().orElseThrow().notice()).isEmpty();
    assertThat(model.right().orElseThrow().place()).isEqualTo(place("lifter@3EX"));
  }

  private void fit(String placeKey) {
    model.scan(sample.read(sample.tag(placeKey)));
    model.scan(sample.read(sample.card(placeKey.replaceAll(".*@", ""))));
  }
}
