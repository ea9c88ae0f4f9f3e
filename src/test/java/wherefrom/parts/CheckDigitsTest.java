package wherefrom.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** ISO/IEC 7064 MOD 97-10. */
class CheckDigitsTest {

  /** The vector is one of the test values of the python-stdnum library's iso7064 module. */
  @Test
  void thePublishedVectorHolds() {
    assertThat(CheckDigits.of("4354111611551114")).isEqualTo("31");
    assertThat(CheckDigits.agree("435411161155111431")).isTrue();
    assertThat(CheckDigits.agree("435411161155111432")).isFalse();
  }

  @Test
  void everySingleWrongDigitIsNoticed() {
    String digits = code(new Random(1));
    for (int at = 0; at < digits.length(); at++) {
      for (char wrong = '0'; wrong <= '9'; wrong++) {
        if (wrong != digits.charAt(at)) {
          String damaged = digits.substring(0, at) + wrong + digits.substring(at + 1);
          assertThat(CheckDigits.agree(damaged)).isFalse();
        }
      }
    }
  }

  @Test
  void everySwapOfTwoDifferentNeighboursIsNoticed() {
    Random random = new Random(2);
    for (int round = 0; round < 500; round++) {
      String digits = code(random);
      for (int at = 0; at + 1 < digits.length(); at++) {
        if (digits.charAt(at) != digits.charAt(at + 1)) {
          String swapped =
              digits.substring(0, at)
                  + digits.charAt(at + 1)
                  + digits.charAt(at)
                  + digits.substring(at + 2);
          assertThat(CheckDigits.agree(swapped)).isFalse();
        }
      }
    }
  }

  /** 100 leaves 3 when divided by 97, and 3 and 95 are one more than 97. */
  @Test
  void aSingleDigitHasItsCheckDigitsAndTwoDigitsAreTooFew() {
    assertThat(CheckDigits.of("1")).isEqualTo("95");
    assertThat(CheckDigits.agree("195")).isTrue();
    assertThat(CheckDigits.agree("01")).isFalse();
    assertThat(CheckDigits.agree("98")).isFalse();
  }

  @Test
  void aLetterIsRefused() {
    assertThatThrownBy(() -> CheckDigits.of("12A4"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("not a digit");
  }

  private static String code(Random random) {
    return new TagCode(
            TagType.PART,
            random.nextInt(TagCode.MOST_ENGINE + 1),
            1 + random.nextInt(TagCode.MOST_ITEM),
            1 + random.nextInt(TagCode.MOST_ISSUE))
        .digits();
  }
}
