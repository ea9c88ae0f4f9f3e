package wherefrom.rules.size;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.inspection.Feature;
import wherefrom.parts.PartKind;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;

/** Journals are ground smaller, bores are bored larger; both in steps from the standard size. */
class CutSurfaceTest {
  private static Amount inch(String number) {
    return Amount.of(number, Unit.INCH);
  }

  @Test
  void everySurfaceIsKnownByWhatIsMeasuredOnIt() {
    assertThat(CutSurface.find(Feature.ROD_JOURNAL)).contains(CutSurface.ROD_JOURNAL);
    assertThat(CutSurface.find(Feature.MAIN_JOURNAL)).contains(CutSurface.MAIN_JOURNAL);
    assertThat(CutSurface.find(Feature.BORE)).contains(CutSurface.BORE);
    assertThat(CutSurface.find(PartKind.PISTON)).contains(CutSurface.BORE);
    assertThat(CutSurface.find(PartKind.ROD)).isEmpty();
  }

  /** Sixty over is bored; no shell is made for sixty under. */
  @Test
  void pistonsAreMadeFurtherFromStandardThanShells() {
    assertThat(CutSurface.BORE.steps().findNear(inch("0.060"))).contains(inch("0.060"));
    assertThat(CutSurface.ROD_JOURNAL.steps().findNear(inch("0.060"))).isEmpty();
  }

  @Test
  void underIsSmallerAndOverIsLarger() {
    assertThat(CutSurface.ROD_JOURNAL.off(inch("2.1000"), inch("2.0900")))
        .isEqualTo(inch("0.0100"));
    assertThat(CutSurface.BORE.off(inch("4.0000"), inch("4.0300"))).isEqualTo(inch("0.0300"));
    assertThat(CutSurface.ROD_JOURNAL.diameter(inch("2.1000"), inch("0.0100")))
        .isEqualTo(inch("2.0900"));
    assertThat(CutSurface.BORE.diameter(inch("4.0000"), inch("0.0300"))).isEqualTo(inch("4.0300"));
    assertThat(CutSurface.ROD_JOURNAL.said(inch("0.010"))).isEqualTo("0.010 in under (ten under)");
    assertThat(CutSurface.BORE.said(Amount.of("0.5", Unit.MILLIMETRE))).isEqualTo("0.50 mm over");
    assertThat(CutSurface.BORE.said(inch("0.0305"))).isEqualTo("0.0305 in over");
  }

  /** No journal is thinner than 20 mm; no step is over 5 mm; what lies between is neither. */
  @ParameterizedTest
  @CsvSource({
    "20 mm, true, true",
    "19.99 mm, false, false",
    "5.01 mm, false, false",
    "5 mm, true, false",
    "0, true, false",
    "-0.1 mm, false, false"
  })
  void aSizeIsADiameterOrAStep(String text, boolean isSize, boolean isDiameter) {
    assertThat(SizeText.read(text, Unit.MILLIMETRE).isPresent()).isEqualTo(isSize);
    assertThat(SizeText.read(text, Unit.MILLIMETRE).filter(SizeText::isDiameter).isPresent())
        .isEqualTo(isDiameter);
  }
}
