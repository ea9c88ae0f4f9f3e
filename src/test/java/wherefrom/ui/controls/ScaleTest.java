package wherefrom.ui.controls;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which letters leave a piece of glass the room for whole sentences. */
class ScaleTest {
  @ParameterizedTest
  @CsvSource({
    "1280, 800, 5.9, 1, false",
    "1280, 800, 5.9, 1.5, true",
    "1024, 600, 4.7, 1.5, true",
    "1920, 1080, 8.7, 1.5, true",
    "800, 1280, 5.9, 1, false",
    "800, 1280, 5.9, 1.5, true",
    "1920, 1080, 5.43, 1.5, false",
    "1920, 1080, 5.43, 2, false",
    "1280, 800, 3.78, 1.5, false",
    "1280, 800, 3.78, 2, false",
    "1920, 1080, 6.96, 1.5, false",
    "1920, 1080, 6.96, 2, true"
  })
  void lettersAreLargeWhereAWholeSentenceWouldFillTheGlass(
      double width, double height, double pixelsPerMm, double factor, boolean large) {
    Scale scale = new Scale(pixelsPerMm, factor).on(width, height);
    assertThat(scale.isLarge()).isEqualTo(large);
    assertThat(scale.textFactor()).isEqualTo(factor);
    assertThat(scale.brief().isLarge()).isEqualTo(factor > 1);
  }

  /** A window that is not laid out yet has no size. */
  @Test
  void aboutGlassOfUnknownSizeNothingIsHoped() {
    assertThat(new Scale(5, 1.5).isLarge()).isTrue();
    assertThat(new Scale(5, 1.5).on(0, 0).isLarge()).isTrue();
    assertThat(new Scale(5, 1).on(0, 0).isLarge()).isFalse();
  }

  @Test
  void theRoomStaysWithTheGlass() {
    Scale scale = new Scale(5.43, 2).on(1920, 1080);
    assertThat(scale.withText(1.5).isLarge()).isFalse();
    assertThat(scale.withText(2)).isEqualTo(scale);
  }

  @Test
  void lettersAreNeverSmallerThanUsual() {
    assertThatThrownBy(() -> new Scale(5, 0.9)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Scale(0, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Scale(5, 1, 0.5)).isInstanceOf(IllegalArgumentException.class);
  }
}
