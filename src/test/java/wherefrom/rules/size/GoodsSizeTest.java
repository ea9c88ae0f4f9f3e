package wherefrom.rules.size;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.engine.ValveSide;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;

class GoodsSizeTest {
  private static GoodsSize under(String figure, Unit unit) {
    return GoodsSize.of(GoodsSize.Sense.UNDER, Amount.of(figure, unit));
  }

  @Test
  void theSameLengthInTheSameSenseIsOneSize() {
    GoodsSize twenty = under("0.020", Unit.INCH);
    assertThat(under("0.508", Unit.MILLIMETRE)).isEqualTo(twenty).hasSameHashCodeAs(twenty);
    assertThat(under("20", Unit.THOU)).isEqualTo(twenty).hasSameHashCodeAs(twenty);
    assertThat(under("0.50", Unit.MILLIMETRE)).isNotEqualTo(twenty);
    assertThat(GoodsSize.of(GoodsSize.Sense.OVER, Amount.of("0.020", Unit.INCH)))
        .isNotEqualTo(twenty);
    assertThat(under("0", Unit.INCH)).isEqualTo(GoodsSize.standard());
  }

  /** All that the buying list has shown as a size, and what people say. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.010 in under (ten under)",
        "0.010 in under",
        "ten under",
        "Ten Undersize",
        "0.254 mm under",
        "0.010 in under (ten under), as measured",
        "0.010 in under (ten under), once ground",
        "0.010 in under (ten under), once ground; the next step that cleans up",
        "0.010 in under; no usual step, so ask who sells parts for it"
      })
  void whatWasShownIsReadAsTheSize(String shown) {
    assertThat(GoodsSize.read(shown, Unit.ONE)).contains(under("0.010", Unit.INCH));
  }

  @ParameterizedTest
  @ValueSource(strings = {"standard", "STD", "standard, as measured", "standard, once ground"})
  void standardIsASizeOfItsOwn(String shown) {
    assertThat(GoodsSize.read(shown, Unit.ONE)).contains(GoodsSize.standard());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "standard, if never ground before: measure the rod journal to be sure",
        "not known: measure each rod journal of the other crank",
        "as the old one; where that is damaged, measure a good neighbor",
        "0.010",
        "under"
      })
  void whatSaysNoSizeIsKeptInItsWords(String shown) {
    assertThat(GoodsSize.read(shown, Unit.ONE)).isEmpty();
    assertThat(GoodsSize.ofLogbook(shown, Optional.empty()))
        .isEqualTo(new GoodsSize.Worded(shown))
        .isNotIn(GoodsSize.none(), GoodsSize.standard());
  }

  @Test
  void everySizeIsReadBackFromItsFields() {
    for (GoodsSize size :
        List.of(
            GoodsSize.none(),
            GoodsSize.standard(),
            new GoodsSize.OfSide(ValveSide.INTAKE),
            new GoodsSize.OfSide(ValveSide.EXHAUST),
            under("0.50", Unit.MILLIMETRE),
            GoodsSize.of(GoodsSize.Sense.OVER, Amount.of("0.030", Unit.INCH)),
            new GoodsSize.Worded("as the old one"))) {
      assertThat(GoodsSize.ofLogbook(size.id(), size.findOff())).isEqualTo(size);
      assertThat(GoodsSize.ofLogbook(size.words(), Optional.empty())).isEqualTo(size);
    }
  }
}
