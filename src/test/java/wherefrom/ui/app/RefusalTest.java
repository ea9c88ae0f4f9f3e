package wherefrom.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.job.tags.CodeLookup;
import wherefrom.rules.CodeVerdict;
import wherefrom.ui.sample.SampleJob;

class RefusalTest {
  private final SampleJob sample = SampleJob.apart();

  private String card(String spot) {
    return Refusal.of(new CodeLookup.ASpot(sample.spot(spot)), "Scan a tag.").headline();
  }

  /** Many words would bring the whole screen down to small letters. */
  @Test
  void aPartOfAnotherEngineIsToldInTwoSentences() {
    CodeLookup found =
        new CodeLookup.Refused(new CodeVerdict.WrongEngine(2, Optional.of("Gray six")));
    assertThat(Refusal.of(found, "").small())
        .isEqualTo(
            "This tag belongs to another engine: Gray six. Put it back with its own engine.");
  }

  /** In large letters a place is not broken over two lines at its number. */
  @Test
  void aNumberStaysInOneLineWithItsPlace() {
    assertThat(card("M3L")).isEqualTo("place card main\u00a03, lower");
    assertThat(card("3IN")).isEqualTo("place card 3\u00a0IN");
    assertThat(Refusal.of(new CodeLookup.ABasket(3), "").headline()).isEqualTo("basket\u00a03");
  }
}
