package wherefrom.job.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.inspection.Look;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.entry.PartOut;
import wherefrom.job.print.TagChoice;
import wherefrom.job.print.TagPrinting;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.job.puttogether.ToFit;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.parts.Place;
import wherefrom.ui.sample.SampleJob;

/** Which day a job is on, and the one thing to do. */
class StandingTest {

  private static NextDeed next(OpenJob job) {
    return NextDeed.of(job, Standing.of(job), OutOrder.CYLINDER);
  }

  private static String at(NextDeed deed) {
    return deed.place().map(Place::key).orElse("");
  }

  @Test
  void theTagsComeFirstThenTheFirstPart() {
    SampleJob sample = SampleJob.whole();
    assertThat(Standing.of(sample.job).day()).isEqualTo(JobDay.TAGS);
    assertThat(next(sample.job).kind()).isEqualTo(NextDeed.Kind.PRINT_TAGS);
    assertThat(next(sample.job).count()).isEqualTo(74);
    TagPrinting printing = new TagPrinting(sample.job);
    printing.printed(printing.faces(new TagChoice.AllParts()), "letter-3x10-66.7x25.4");
    assertThat(Standing.of(sample.job).open(JobDay.TAGS)).as("the place cards").isEqualTo(42);
    assertThat(Standing.of(sample.job).day()).isEqualTo(JobDay.APART);
    assertThat(next(sample.job).kind()).isEqualTo(NextDeed.Kind.TAKE_OUT);
    assertThat(at(next(sample.job))).isEqualTo("rocker@1IN");
  }

  @Test
  void whoHasBegunWithoutTagsGoesOn() {
    SampleJob sample = SampleJob.whole();
    sample.job.record(new PartOut(sample.part("rocker@3EX").item()));
    assertThat(Standing.of(sample.job).day()).isEqualTo(JobDay.APART);
    assertThat(at(next(sample.job))).isEqualTo("pushrod@3EX");
    assertThat(Standing.of(sample.job).open(JobDay.TAGS)).isEqualTo(74);
  }

  @Test
  void whatWantsADecisionComesBeforePuttingTogether() {
    SampleJob sample = SampleJob.apart();
    assertThat(Standing.of(sample.job).day()).isEqualTo(JobDay.TOGETHER);
    String check = wherefrom.inspection.Checks.of(wherefrom.parts.PartKind.PUSHROD).get(0).key();
    sample.job.record(new LookRecorded(sample.part("pushrod@3EX").item(), check, Look.SUSPECT, ""));
    assertThat(Standing.of(sample.job).day()).isEqualTo(JobDay.INSPECT);
    assertThat(next(sample.job).kind()).isEqualTo(NextDeed.Kind.DECIDE);
    assertThat(next(sample.job).count()).isEqualTo(1);
  }

  @Test
  void aStopThatWaitsIsBeforeAll() {
    SampleJob sample = SampleJob.apart();
    PutTogether together = new PutTogether(sample.job);
    together.scan(sample.read(sample.tag("pushrod@3EX")));
    together.scan(sample.read(sample.card("5EX")));
    assertThat(next(sample.job).kind()).isEqualTo(NextDeed.Kind.SOLVE_STOP);
    assertThat(at(next(sample.job))).isEqualTo("pushrod@5EX");
    assertThat(next(sample.job).words()).contains("cylinder 3, exhaust");
  }

  /** Two parts that went in early make no day behind that has parts to take out or to print. */
  @Test
  void aDayIsBehindOnlyWhenNothingOfItIsOpen() {
    SampleJob sample = SampleJob.whole();
    assertThat(Standing.of(sample.job).isDone(JobDay.INSPECT)).isFalse();
    for (String key : java.util.List.of("rocker@1IN", "rocker@1EX")) {
      sample.job.record(new PartOut(sample.part(key).item()));
    }
    for (String key : java.util.List.of("rocker@1IN", "rocker@1EX")) {
      Place place = Place.find(key).orElseThrow();
      sample.job.record(new wherefrom.job.entry.PartFitted(sample.part(key).item(), place));
    }
    Standing early = Standing.of(sample.job);
    assertThat(early.day()).isEqualTo(JobDay.TOGETHER);
    assertThat(java.util.List.of(JobDay.values())).noneMatch(early::isDone);
    assertThat(Standing.of(SampleJob.apart().job).isDone(JobDay.APART)).isTrue();
  }

  /** What nobody looked at is not behind, though nothing wants a decision; what went in is. */
  @Test
  void inspectingIsBehindOnceAllIsLookedAtOrIn() {
    SampleJob sample = SampleJob.apart();
    assertThat(Standing.of(sample.job).open(JobDay.INSPECT)).isZero();
    assertThat(Standing.of(sample.job).unlooked()).isEqualTo(74);
    assertThat(Standing.of(sample.job).isDone(JobDay.INSPECT)).isFalse();
    Fitting fitting = new Fitting(sample.job);
    for (Place place : new ToFit(sample.job).places()) {
      fitting.fit(sample.part(place.key()), place.spot(), false);
    }
    assertThat(Standing.of(sample.job).unlooked()).isZero();
    assertThat(Standing.of(sample.job).isDone(JobDay.INSPECT)).isTrue();
  }

  @Test
  void whatIsAwayWaitsUntilNothingElseIsLeftToFit() {
    SampleJob sample = SampleJob.apart();
    Place first = new ToFit(sample.job).places().get(0);
    sample.job.record(new wherefrom.job.entry.OffForWashing(sample.part(first.key()).item(), 2));
    assertThat(next(sample.job).kind()).isEqualTo(NextDeed.Kind.FIT);
    assertThat(next(sample.job).place()).isNotEqualTo(java.util.Optional.of(first));
  }

  @Test
  void whenAllIsInTheSectionsAreClosedThenTheRecordIsLeft() {
    SampleJob sample = SampleJob.apart();
    Fitting fitting = new Fitting(sample.job);
    for (Place place : new ToFit(sample.job).places()) {
      fitting.fit(sample.part(place.key()), place.spot(), false);
    }
    assertThat(next(sample.job).kind()).isEqualTo(NextDeed.Kind.CLOSE_SECTIONS);
    ToFit missing = new ToFit(sample.job);
    missing.sections().forEach(missing::finish);
    assertThat(Standing.of(sample.job).day()).isEqualTo(JobDay.RECORD);
    assertThat(next(sample.job).kind()).isEqualTo(NextDeed.Kind.FIRST_START);
    assertThat(Standing.of(sample.job).open(JobDay.TOGETHER)).isZero();
  }
}
