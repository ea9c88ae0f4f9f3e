package wherefrom.ui.controls;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.ui.Toolkit;

/** Where a line may end. */
class WrappingTest {
  private static final double SIZE = 20;

  private static String broken(String words, double width) {
    return Toolkit.on(() -> new Wrapping(words, false).broken(SIZE, width));
  }

  @Test
  void theLetterBelowASymbolStaysWithIt() {
    for (int width = 60; width < 400; width += 10) {
      assertThat(broken("CR = (V_s + V_c) / V_c, V_c = chamber", width)).doesNotContain("_\n");
    }
  }

  @Test
  void aLongNameOfAFileMayGoOnBehindItsUnderscore() {
    assertThat(broken("photographs_of_the_left_head", 150)).contains("_\n");
  }
}
