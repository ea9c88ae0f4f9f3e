package wherefrom.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;

class AmountTest {
  private static Amount amount(String number, Unit unit) {
    return Amount.of(number, unit);
  }

  @Test
  void inchAndMillimetreConvertExactly() {
    assertThat(amount("3.870", Unit.INCH).to(Unit.MILLIMETRE))
        .isEqualTo(amount("98.298", Unit.MILLIMETRE));
    assertThat(amount("0.0001", Unit.INCH).to(Unit.MICROMETRE).number())
        .isEqualByComparingTo("2.54");
    assertThat(amount("2540", Unit.MILLIMETRE).to(Unit.INCH)).isEqualTo(amount("100", Unit.INCH));
    assertThat(amount("1", Unit.INCH).to(Unit.THOU)).isEqualTo(amount("1000", Unit.THOU));
  }

  @Test
  void definedUnitsAreExact() {
    // NIST Special Publication 811, appendix B.8: values marked exact or derived from such.
    assertThat(amount("1", Unit.CUBIC_INCH).to(Unit.CUBIC_CENTIMETRE).number())
        .isEqualByComparingTo("16.387064");
    assertThat(amount("1", Unit.SQUARE_INCH).inBase()).isEqualByComparingTo("645.16");
    assertThat(amount("1", Unit.POUND).inBase())
        .isEqualByComparingTo(new BigDecimal("0.45359237").multiply(new BigDecimal("9.80665")));
    assertThat(amount("1", Unit.POUND_FOOT).in(Unit.NEWTON_METRE))
        .isCloseTo(1.355818, within(5e-7));
    assertThat(amount("1", Unit.POUND_INCH).in(Unit.NEWTON_METRE))
        .isCloseTo(0.1129848, within(5e-8));
    assertThat(amount("12", Unit.POUND_INCH).to(Unit.POUND_FOOT).number())
        .isEqualByComparingTo("1");
    assertThat(amount("1", Unit.POUND_PER_INCH).in(Unit.NEWTON_PER_MILLIMETRE))
        .isCloseTo(0.1751268, within(5e-8));
    assertThat(amount("1", Unit.PSI).inBase().doubleValue()).isCloseTo(0.006894757, within(5e-10));
    assertThat(amount("90", Unit.ARC_MINUTE).to(Unit.DEGREE).number()).isEqualByComparingTo("1.5");
  }

  @Test
  void aVolumePerDepthIsAnArea() {
    // One square inch, a thousandth of an inch deep, holds 16.387064/1000 cc.
    assertThat(amount("1", Unit.SQUARE_INCH).to(Unit.CC_PER_THOU).number())
        .isEqualByComparingTo("0.016387064");
  }

  @Test
  void thermometersHaveTheirZerosApart() {
    // Fixed points: ice 0 °C = 32 °F, steam 100 °C = 212 °F, and −40 on both.
    assertThat(amount("32", Unit.FAHRENHEIT).to(Unit.CELSIUS).number()).isEqualByComparingTo("0");
    assertThat(amount("212", Unit.FAHRENHEIT).inBase()).isEqualByComparingTo("100");
    assertThat(amount("100", Unit.CELSIUS).to(Unit.FAHRENHEIT).number())
        .isEqualByComparingTo("212");
    assertThat(amount("-40", Unit.CELSIUS).to(Unit.FAHRENHEIT).number())
        .isEqualByComparingTo("-40");
    assertThat(Unit.find("°f")).contains(Unit.FAHRENHEIT);
  }

  @Test
  void milesAndKilometersAreNoLengths() {
    // NIST Special Publication 811, appendix B.8: 1 mile is 1609.344 m.
    assertThat(amount("500", Unit.MILE).to(Unit.KILOMETRE).number())
        .isEqualByComparingTo("804.672");
    assertThatThrownBy(() -> amount("1", Unit.MILE).to(Unit.INCH))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void thereAndBackIsTheSame() {
    Random random = new Random(4);
    for (Unit from : Unit.values()) {
      for (Unit to : Unit.listOf(from.dimension())) {
        Amount before = new Amount(BigDecimal.valueOf(random.nextInt(1_000_000), 4), from);
        BigDecimal after = before.to(to).to(from).number();
        assertThat(after.subtract(before.number()).abs()).isLessThan(new BigDecimal("1e-30"));
      }
    }
  }

  @Test
  void unlikeThingsDoNotConvert() {
    assertThatThrownBy(() -> amount("1", Unit.INCH).to(Unit.DEGREE))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Measured.of(amount("1", Unit.INCH), amount("1", Unit.POUND)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void everySymbolIsReadBack() {
    for (Unit unit : Unit.values()) {
      if (!unit.symbol().isEmpty()) {
        assertThat(AmountText.read("1.5 " + unit.symbol()))
            .isEqualTo(new AmountReading.Understood(amount("1.5", unit)));
      }
    }
  }

  @Test
  void showsTheLastDigitEntered() {
    assertThat(amount("0.0015", Unit.INCH).text()).isEqualTo("0.0015 in");
    assertThat(amount("3.870", Unit.INCH).text()).isEqualTo("3.870 in");
    assertThat(amount("9.5", Unit.ONE).text()).isEqualTo("9.5");
    assertThat(amount("0.00000001", Unit.INCH).text()).isEqualTo("0.00000001 in");
    assertThat(amount("1.25", Unit.MILLIMETRE).rounded(1).text()).isEqualTo("1.3 mm");
  }

  @Test
  void lengthsKeepTheLastDigitOfBothGauges() {
    assertThat(Length.ofInches(new BigDecimal("0.0001")).nanometres()).isEqualTo(2540);
    assertThat(Length.ofInches(new BigDecimal("-0.0015")).nanometres()).isEqualTo(-38_100);
    assertThat(Length.ofMillimetres(new BigDecimal("0.001")).nanometres()).isEqualTo(1000);
  }

  @Test
  void moneyIsWholeCents() {
    assertThat(Money.find("12,5")).contains(Money.ofCents(1250));
    assertThat(Money.find(" 1240.05 ").orElseThrow().text()).isEqualTo("1240.05");
    assertThat(Money.find("1.240,05")).isEmpty();
    assertThat(Money.find("-3")).isEmpty();
    assertThat(Money.ofCents(5).plus(Money.ofCents(10)).minus(Money.ofCents(20)).text())
        .isEqualTo("-0.05");
  }
}
