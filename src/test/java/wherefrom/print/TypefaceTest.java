package wherefrom.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import wherefrom.pdf.Typeface;

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
    assertThat(face.clean("㊿")).isEqualTo("5");
  }

  @Test
  void latinGreekAndCyrillicAreSetFromTwoFonts() {
    String name = "Łukasz Ωmega Двигатель";
    assertThat(face.clean(name)).isEqualTo(name);
    assertThat(face.runs(name))
        .extracting(Typeface.Run::text)
        .containsExactly("Ł", "ukasz Ωmega ", "Двигатель");
    assertThat(face.runs(name)).extracting(Typeface.Run::spare).containsExactly(true, false, true);
    assertThat(face.width(name)).isGreaterThan(face.width("ukasz mega"));
    assertThat(face.lacking(name)).isEmpty();
  }

  /** Latin-1 to Extended-B, Greek, Cyrillic, Vietnamese: all that Unicode 5 had of them. */
  @Test
  void theAlphabetsOfEuropePrintWhole() {
    StringBuilder letters = new StringBuilder();
    for (int[] range :
        new int[][] {
          {0xA1, 0x24F}, {0x391, 0x3CE}, {0x400, 0x482}, {0x48A, 0x513}, {0x1E00, 0x1E9B}
        }) {
      for (int at = range[0]; at <= range[1]; at++) {
        if (Character.isLetter(at)) {
          letters.appendCodePoint(at);
        }
      }
    }
    assertThat(letters.length()).isGreaterThan(800);
    assertThat(face.lacking(letters.toString())).isEmpty();
    assertThat(Typeface.bold().lacking(letters.toString())).isEmpty();
  }

  @Test
  void whatNoFontHasIsNamedOnce() {
    assertThat(face.lacking("東京 V8 東 محرك")).isEqualTo("東京محرك");
    assertThat(face.lacking("Is it straight? é\u200b")).isEmpty();
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
