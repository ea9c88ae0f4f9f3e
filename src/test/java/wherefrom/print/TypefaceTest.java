package wherefrom.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class TypefaceTest {
  private final Typeface face = Typeface.regular();

  @Test
  void whatTheFontHasStaysAsItIs() {
    assertThat(face.clean("Öäß ½ ° é × 5⅜ …")).isEqualTo("Öäß ½ ° é × 5⅜ …");
    assertThat(face.clean("e\u0301")).as("a combining accent").isEqualTo("é");
  }

  @Test
  void whatItLacksIsReplaced() {
    assertThat(face.clean("\u30a8\u30f3")).isEqualTo("??");
    assertThat(face.clean("a\tb\u00a0c\u200bd")).isEqualTo("a b cd");
    assertThat(face.clean("\uD83D\uDE97 \uD83D")).isEqualTo("? ?");
    assertThat(face.clean("①")).isEqualTo("1");
  }

  @Test
  void anyTextAtAllCanBeMeasuredAndShortened() {
    SplittableRandom random = new SplittableRandom(11);
    for (int run = 0; run < 2_000; run++) {
      StringBuilder text = new StringBuilder();
      random.ints(random.nextInt(40), 0, 0x1_1000).forEach(text::appendCodePoint);
      String clean = face.clean(text.toString());
      double room = 3 + random.nextDouble() * 20;
      String shown = face.shorten(clean, room);
      assertThat(face.width(shown)).isLessThanOrEqualTo(room + 1e-5);
      assertThat(shown.equals(clean) || shown.endsWith("…")).isTrue();
    }
  }
}
