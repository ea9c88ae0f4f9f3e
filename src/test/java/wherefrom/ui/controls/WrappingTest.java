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
  void whatNamesAPlaceOrAPartStaysWhole() {
    String words = "Take 0004 21 out of 3 EX: it belongs at 1 IN, or at rod 4, main 5, 0.010 in";
    for (int width = 110; width < 700; width += 10) {
      assertThat(broken(words, width).lines())
          .noneMatch(
              line ->
                  line.matches(".*(\\d|rod|main|0004)$")
                      && !line.endsWith("21")
                      && !line.endsWith("4")
                      && !line.endsWith("5"))
          .noneMatch(line -> line.matches("(EX|IN|21|in)\\b.*"));
    }
  }

  @Test
  void aTorqueStaysWithItsUnit() {
    for (int width = 60; width < 400; width += 10) {
      assertThat(broken("Bolt 5 to 60 N·m, or to 44 lb·ft", width).lines())
          .noneMatch(line -> line.startsWith("N·m") || line.startsWith("lb·ft"));
    }
  }

  @Test
  void aLongNameOfAFileMayGoOnBehindItsUnderscore() {
    assertThat(broken("photographs_of_the_left_head", 150)).contains("_\n");
  }

  @Test
  void dotsStayWithTheWordBeforeThem() {
    for (int width = 60; width < 400; width += 10) {
      assertThat(broken("Look at the lower main …", width).lines()).noneMatch("…"::equals);
    }
  }
}
