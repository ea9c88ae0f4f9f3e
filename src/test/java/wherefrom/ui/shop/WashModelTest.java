package wherefrom.ui.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import wherefrom.job.PlaceState;
import wherefrom.ui.app.ReadTwice;
import wherefrom.ui.sample.SampleJob;

class WashModelTest {
  private final SampleJob sample = SampleJob.apart();
  private final AtomicLong nanos = new AtomicLong();
  private final WashModel model = new WashModel(sample.job, nanos::get);

  private String take() {
    return model.take(sample.record("pushrod@3EX")).sentence();
  }

  @Test
  void aTagThatIsReadTwiceInOneGoCountsOnce() {
    assertThat(take()).startsWith("3 EX pushrod").contains("is in basket 1");
    nanos.addAndGet(ReadTwice.NANOS - 1);
    assertThat(take()).contains("read twice");
    assertThat(sample.state("pushrod@3EX")).isEqualTo(PlaceState.WASHING);
  }

  @Test
  void readLaterItIsBack() {
    take();
    nanos.addAndGet(ReadTwice.NANOS);
    assertThat(take()).startsWith("3 EX pushrod").contains("is back");
    assertThat(sample.state("pushrod@3EX")).isEqualTo(PlaceState.OUT);
  }
}
