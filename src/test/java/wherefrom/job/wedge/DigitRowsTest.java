package wherefrom.job.wedge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DigitRowsTest {

  @ParameterizedTest
  @EnumSource
  void someRowOfTheTableReadsEachLayout(XkbRows layout) {
    assertThat(DigitRows.KNOWN)
        .anySatisfy(
            row ->
                assertThat(layout.type("0123456789").codePoints().mapToObj(row::digit))
                    .containsExactlyElementsOf(
                        IntStream.range(0, 10).mapToObj(OptionalInt::of).toList()));
  }

  @Test
  void noTwoRowsGiveAnotherDigitToMoreThanFourSharedCharacters() {
    for (DigitRow one : DigitRows.KNOWN) {
      for (DigitRow other : DigitRows.KNOWN) {
        long disagreeing =
            one.typed()
                .codePoints()
                .filter(key -> other.digit(key).isPresent())
                .filter(key -> !other.digit(key).equals(one.digit(key)))
                .count();
        assertThat(disagreeing).as(one.layout() + " and " + other.layout()).isLessThanOrEqualTo(4);
      }
    }
  }

  @Test
  void aLearnedRowOutsideTheTableStandsAloneWithPlainDigits() {
    ScannerSetup learned = new ScannerSetup("", "", "qwertyuiop");
    assertThat(DigitRows.of(learned))
        .extracting(DigitRow::typed)
        .containsExactly("0123456789", "qwertyuiop");
  }

  @Test
  void aLearnedRowOfTheTableChangesNothing() {
    Arrays.stream(XkbRows.values())
        .filter(layout -> layout != XkbRows.PERSIAN)
        .map(layout -> new ScannerSetup("", "", layout.type("0123456789")))
        .forEach(setup -> assertThat(DigitRows.of(setup)).isSameAs(DigitRows.KNOWN));
  }

  @Test
  void aSetupWithoutTenDifferentCharactersIsRefused() {
    assertThatThrownBy(() -> new ScannerSetup("", "", "0123456788"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("ten different characters");
    assertThatThrownBy(() -> new ScannerSetup("", "", "012345678"))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
