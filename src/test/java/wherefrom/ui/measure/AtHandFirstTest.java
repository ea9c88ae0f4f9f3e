package wherefrom.ui.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.entry.PartOut;
import wherefrom.ui.sample.SampleJob;

/** What lies on the bench is measured before what is still in the engine. */
class AtHandFirstTest {
  private final SampleJob sample = SampleJob.whole();
  private final MeasureModel model = new MeasureModel(sample.job);
  private final ReadingPlan wall = ReadingPlans.find("rod-shell-wall").orElseThrow();

  private Subject subject(String place) {
    return Subject.ofPart(sample.part(place).item());
  }

  @Test
  void thePartOnTheBenchIsNextThoughOthersComeBeforeIt() {
    sample.job.record(new PartOut(sample.part("rod-shell@R1U").item()));
    sample.job.record(new PartOut(sample.part("rod-shell@R1L").item()));
    assertThat(model.next(wall, subject("rod-shell@R1L"))).contains(subject("rod-shell@R1U"));
    assertThat(model.next(wall, subject("rod-shell@R1U"))).contains(subject("rod-shell@R1L"));
  }

  @Test
  void whereNothingElseIsAtHandTheNextInTheEngineIsNamed() {
    sample.job.record(new PartOut(sample.part("rod-shell@R1U").item()));
    assertThat(model.next(wall, subject("rod-shell@R1U"))).isPresent();
  }
}
