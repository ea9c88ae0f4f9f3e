package wherefrom.ui.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The card of ISO/IEC 7810, size ID-1: 85.60 mm by 53.98 mm. */
class CardSizeModelTest {
  @Test
  void aCardThatIsAsWideAsTheDrawnOneGivesThePixelsOfAMillimetre() {
    CardSizeModel card = new CardSizeModel(96 / 25.4);
    while (card.widePx() < 539) {
      card.step(1);
    }
    // 160 dots an inch are 6.299 in a millimetre; a whole pixel of the card is 0.012 of that.
    assertThat(card.pixelsPerMm()).isEqualTo(160 / 25.4, within(0.012));
    assertThat(card.highPx() / card.widePx()).isEqualTo(53.98 / 85.60, within(1e-9));
  }

  @Test
  void itCannotBeSteppedToNothing() {
    CardSizeModel card = new CardSizeModel(4);
    card.step(-10_000);
    assertThat(card.pixelsPerMm()).isGreaterThan(1);
  }
}
