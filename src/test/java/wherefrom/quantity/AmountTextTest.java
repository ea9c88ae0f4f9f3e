package wherefrom.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class AmountTextTest {
  private static Amount read(String text) {
    return ((AmountReading.Understood) AmountText.read(text)).amount();
  }

  private static String refusal(String text) {
    return ((AmountReading.NotUnderstood) AmountText.read(text)).sentence();
  }

  @Test
  void readsPointAndCommaAlike() {
    assertThat(read("3.870in")).isEqualTo(Amount.of("3.870", Unit.INCH));
    assertThat(read(" 98,298 mm ")).isEqualTo(Amount.of("98.298", Unit.MILLIMETRE));
    assertThat(read("-.025in")).isEqualTo(Amount.of("-0.025", Unit.INCH));
    assertThat(read("\u22120.5 mm")).isEqualTo(Amount.of("-0.5", Unit.MILLIMETRE));
    assertThat(read("+5.deg")).isEqualTo(Amount.of("5.0", Unit.DEGREE));
    assertThat(read("4\"")).isEqualTo(Amount.of("4", Unit.INCH));
    assertThat(read("90°")).isEqualTo(Amount.of("90", Unit.DEGREE));
    assertThat(read("44N")).isEqualTo(Amount.of("44", Unit.NEWTON));
    assertThat(read("60 Nm")).isEqualTo(Amount.of("60", Unit.NEWTON_METRE));
    assertThat(read("10LB")).isEqualTo(Amount.of("10", Unit.POUND));
  }

  @Test
  void hasNoThousandsMark() {
    assertThat(read("1,250in")).isEqualTo(Amount.of("1.250", Unit.INCH));
    assertThat(refusal("1,250.5in")).contains("no thousands mark");
    assertThat(refusal("1.250.000 mm")).contains("no thousands mark");
    assertThat(refusal("1 250 mm")).contains("one figure");
    assertThat(refusal("1'250 mm")).contains("no thousands mark");
  }

  @Test
  void refusesWithASentence() {
    assertThat(refusal("")).contains("Nothing was typed");
    assertThat(refusal("3.870")).contains("no unit");
    assertThat(refusal("7/8in")).contains("fraction", "0.875");
    assertThat(refusal("1e3mm")).contains("not a known unit");
    assertThat(refusal("4 furlongs")).contains("furlongs", "not a known unit");
    assertThat(refusal("NaN mm")).contains("does not start with a figure");
    assertThat(refusal("--4mm")).contains("does not start with a figure");
    assertThat(refusal("12345678901234567890.12345mm")).contains("more digits");
  }

  @Test
  void neverFailsAndNeverGuesses() {
    Random random = new Random(9);
    String letters = "0123456789.,-+±/ inmcde'\"°x";
    int understood = 0;
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(8); n >= 0; n--) {
        text.append(letters.charAt(random.nextInt(letters.length())));
      }
      AmountReading reading = AmountText.read(text.toString());
      if (reading instanceof AmountReading.Understood u) {
        understood++;
        assertThat(u.amount().number().abs()).isLessThan(BigDecimal.valueOf(100_000_000));
        assertThat(read(u.amount().text())).isEqualTo(u.amount());
      } else {
        assertThat(((AmountReading.NotUnderstood) reading).sentence()).isNotBlank();
      }
    }
    assertThat(understood).isPositive();
  }

  private static Measured measured(String text) {
    return ((MeasuredReading.Understood) MeasuredText.read(text)).measured();
  }

  @Test
  void readsUncertainties() {
    Measured bore = Measured.of(Amount.of("3.870", Unit.INCH), Amount.of("0.0005", Unit.INCH));
    assertThat(measured("3.870in±0.0005in")).isEqualTo(bore);
    assertThat(measured("3.870in+-0.0005")).isEqualTo(bore);
    assertThat(measured("3.870 in +/- 0.0005 in")).isEqualTo(bore);
    assertThat(measured("3.870in").standardUncertainty()).isEmpty();
    assertThat(measured("3.87in±0.5thou").standardUncertainty())
        .contains(Amount.of("0.5", Unit.THOU));
  }

  @Test
  void limitsBecomeAStandardUncertainty() {
    // JCGM 100:2008, 4.3.7: half-width over the root of three.
    Amount u = measured("72cc±0.3cc max").standardUncertainty().orElseThrow();
    assertThat(u.number().doubleValue())
        .isEqualTo(0.3 / Math.sqrt(3), org.assertj.core.api.Assertions.within(1e-15));
  }

  @Test
  void refusesUncertaintiesThatCannotBe() {
    assertThat(refusedMeasure("3.87in±1deg")).contains("kind of unit");
    assertThat(refusedMeasure("3.87in±-0.1in")).contains("negative");
    assertThat(refusedMeasure("3.87in±0.1in±0.1in")).contains("more than one");
    assertThat(refusedMeasure("3.87in±")).contains("Nothing was typed");
  }

  private static String refusedMeasure(String text) {
    return ((MeasuredReading.NotUnderstood) MeasuredText.read(text)).sentence();
  }

  /** The same unit as people write it: pound-force with or without its f, either way round. */
  @Test
  void aPoundIsAForceHoweverItIsWritten() {
    for (String unit : List.of("lb/in", "lbf/in", "lbs/in", "LBF/IN")) {
      assertThat(AmountText.read("220 " + unit))
          .isEqualTo(new AmountReading.Understood(Amount.of("220", Unit.POUND_PER_INCH)));
    }
    for (String unit : List.of("lb·ft", "lbf·ft", "lbf.ft", "lbf-ft", "ft-lb", "ft·lbf")) {
      assertThat(AmountText.read("65 " + unit))
          .isEqualTo(new AmountReading.Understood(Amount.of("65", Unit.POUND_FOOT)));
    }
    for (String unit : List.of("lb-in", "lbf·in", "in-lb", "in·lbf")) {
      assertThat(AmountText.read("65 " + unit))
          .isEqualTo(new AmountReading.Understood(Amount.of("65", Unit.POUND_INCH)));
    }
    assertThat(AmountText.read("11500000 lbf/in²"))
        .isEqualTo(new AmountReading.Understood(Amount.of("11500000", Unit.PSI)));
  }
}
