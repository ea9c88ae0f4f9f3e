package wherefrom.ui.timing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.engine.Spots;
import wherefrom.engine.ValveSpot;
import wherefrom.job.timing.TimingBook;
import wherefrom.ui.sample.SampleJob;

class ReadingModelTest {
  private final SampleJob sample = SampleJob.apart();
  private final ValveSpot lobe = Spots.valves(sample.job.state().layout()).get(0);
  private final TimingBook book = new TimingBook(sample.job);
  private final ReadingModel model = new ReadingModel(book, lobe);

  @Test
  void aLiftThatIsNotUnderstoodKeepsItsAngle() {
    assertThat(model.take("110")).isEmpty();
    assertThat(model.take("-")).isNotEmpty();
    assertThat(model.wantsDegrees()).isFalse();
    assertThat(model.take("0.0500")).isEmpty();
    assertThat(book.readings(lobe)).hasSize(1);
  }
}
