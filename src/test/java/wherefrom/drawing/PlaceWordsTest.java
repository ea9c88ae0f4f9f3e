package wherefrom.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.parts.Place;

/** What a place is called on the glass, with its kind. */
class PlaceWordsTest {
  private static final Layout LAYOUT = ReadyLayouts.find("v8-odd-even").orElseThrow();

  private static String named(String key) {
    return PlaceWords.named(LAYOUT, Place.find(key).orElseThrow());
  }

  @Test
  void noShortKeyOfASpotIsShown() {
    assertThat(named("pushrod@3EX")).isEqualTo("3 EX pushrod");
    assertThat(named("piston@B1")).isEqualTo("cylinder 1, piston");
    assertThat(named("rod-shell@R1L")).isEqualTo("rod 1, lower shell");
    assertThat(named("main-shell@M2U")).isEqualTo("main 2, upper shell");
    assertThat(named("rod@R4U")).isEqualTo("cylinder 4, rod");
    assertThat(named("cam-bearing@C3")).isEqualTo("cam bearing 3");
  }
}
