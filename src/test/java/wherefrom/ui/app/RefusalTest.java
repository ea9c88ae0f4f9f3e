package wherefrom.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.job.tags.CodeLookup;
import wherefrom.ui.sample.SampleJob;

class RefusalTest {
  private final SampleJob sample = SampleJob.apart();

  /** {@code M3 LO} is one name: in large letters it is not broken over two lines. */
  @Test
  void theNameOfAPlaceStaysInOneLine() {
    CodeLookup card = new CodeLookup.ASpot(sample.spot("M3L"));
    assertThat(Refusal.of(card, "Scan a tag.").headline()).isEqualTo("place card M3\u00a0LO");
    assertThat(Refusal.of(new CodeLookup.ABasket(3), "").headline()).isEqualTo("basket\u00a03");
  }
}
