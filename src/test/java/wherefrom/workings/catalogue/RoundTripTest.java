package wherefrom.workings.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Measured;
import wherefrom.quantity.Unit;
import wherefrom.workings.Inputs;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;

/** There and back again, on seeded inputs. */
class RoundTripTest {
  private static final int RUNS = 1_000;

  private static Inputs space(Random random) {
    return Samples.all().stream()
        .filter(sample -> sample.key().equals("compression-ratio"))
        .findFirst()
        .orElseThrow()
        .draw(random);
  }

  private static Result run(String key, Inputs inputs) {
    return (Result) Workings.find(key).orElseThrow().compute(inputs);
  }

  @Test
  void chamberForTheRatioOfAChamberIsThatChamber() {
    Random random = new Random(11);
    for (int i = 0; i < RUNS; i++) {
      Inputs inputs = space(random);
      double ratio = run("compression-ratio", inputs).getValue("ratio").value();
      Result back = run("chamber-for-ratio", inputs.with("target", Amount.of(ratio, Unit.ONE)));
      double chamber =
          inputs.findMeasured("chamber").orElseThrow().value().in(Unit.CUBIC_CENTIMETRE);
      assertThat(back.getValue("chamber").value()).isCloseTo(chamber, within(1e-9));
      assertThat(back.getValue("remove").value()).isCloseTo(0, within(1e-9));
    }
  }

  @Test
  void deckCutBringsTheRatioItWasAskedFor() {
    Random random = new Random(12);
    for (int i = 0; i < RUNS; i++) {
      Inputs inputs = space(random);
      double ratio = run("compression-ratio", inputs).getValue("ratio").value() + 0.3;
      Result cut = run("deck-cut", inputs.with("target", Amount.of(ratio, Unit.ONE)));
      Inputs after = inputs.with("deck", cut.getValue("deck").amount());
      assertThat(run("compression-ratio", after).getValue("ratio").value())
          .isCloseTo(ratio, within(1e-9));
    }
  }

  @Test
  void headCutBringsTheRatioItWasAskedFor() {
    Random random = new Random(13);
    Amount opening = Amount.of("6.500", Unit.CC_PER_MILLIMETRE);
    for (int i = 0; i < RUNS; i++) {
      Inputs inputs = space(random);
      double ratio = run("compression-ratio", inputs).getValue("ratio").value() + 0.3;
      Amount wanted =
          run("chamber-for-ratio", inputs.with("target", Amount.of(ratio, Unit.ONE)))
              .getValue("chamber")
              .amount();
      Amount now = inputs.findMeasured("chamber").orElseThrow().value();
      Result cut =
          run(
              "head-cut",
              Inputs.empty()
                  .with("chamber-now", now)
                  .with("chamber-wanted", wanted)
                  .with("opening", opening));
      Inputs after =
          inputs
              .with("opening", opening)
              .with("head-cut", cut.getValue("cut").amount())
              .with("deck-cut", Amount.of(BigDecimal.ZERO.toPlainString(), Unit.INCH));
      assertThat(run("ratio-after-cut", after).getValue("ratio").value())
          .isCloseTo(ratio, within(1e-9));
    }
  }

  @Test
  void equalAmountsInInchAndMillimetreLeaveNothing() {
    assertThat(
            Ask.value(
                "change",
                "pushrod-length",
                "base-radius-loss=0.254mm",
                "lowering=0.010in",
                "pushrod-tilt=0deg",
                "tip-rise=0in",
                "rocker-ratio=1.5"))
        .isZero();
  }

  @Test
  void inchAndMillimetreInputsAgreeToTheLastDigit() {
    double inch =
        Ask.value("cylinder", "swept-volume", "bore=3.870in", "stroke=3.31in", "cylinders=8");
    double metric =
        Ask.value("cylinder", "swept-volume", "bore=98.298mm", "stroke=84,074mm", "cylinders=8");
    assertThat(metric / inch).isCloseTo(16.387064, within(1e-14));
    double clearance =
        Ask.value("clearance", "oil-clearance-bore", "inside=66.3442mm", "journal=2.610in");
    assertThat(clearance).isEqualTo(0.0502);
  }

  /** The same size to the last digit in the other system. */
  private static Amount metric(Amount amount) {
    return switch (amount.unit()) {
      case INCH, THOU -> amount.to(Unit.MILLIMETRE);
      case CUBIC_INCH -> amount.to(Unit.CUBIC_CENTIMETRE);
      case POUND -> amount.to(Unit.NEWTON);
      default -> amount;
    };
  }

  private static BigDecimal inBase(ResultValue value) {
    return new BigDecimal(value.value())
        .multiply(value.unit().numerator())
        .divide(value.unit().denominator(), MathContext.DECIMAL128);
  }

  /** One rounding into each of the two units is all that may lie between them. */
  @ParameterizedTest
  @MethodSource("wherefrom.workings.catalogue.PrecisionTest#keys")
  void everyWorkingAnswersTheSameForInchesAndForMillimetres(String key) {
    Sample sample = Samples.all().stream().filter(s -> s.key().equals(key)).findFirst().get();
    Random random = new Random(14);
    for (int i = 0; i < RUNS; i++) {
      Inputs inches = sample.draw(random);
      Inputs millimetres = inches;
      for (String input : inches.entries().keySet()) {
        millimetres =
            inches.findMeasured(input).isEmpty()
                ? millimetres
                : millimetres.with(input, metric(inches.findMeasured(input).get()));
      }
      Result one = run(key, inches);
      Result other = run(key, millimetres);
      for (String result : sample.references().keySet()) {
        BigDecimal before = inBase(one.getValue(result));
        BigDecimal off = before.subtract(inBase(other.getValue(result))).abs();
        assertThat(off).as(result).isLessThanOrEqualTo(before.abs().multiply(TWO_ROUNDINGS));
        assertThat(other.getValue(result).standardUncertainty() * perBase(other, result))
            .isCloseTo(
                one.getValue(result).standardUncertainty() * perBase(one, result),
                withinPercentage(1e-10));
      }
    }
  }

  private static final BigDecimal TWO_ROUNDINGS = BigDecimal.valueOf(Math.ulp(1.0));

  private static double perBase(Result result, String key) {
    Unit unit = result.getValue(key).unit();
    return unit.numerator().doubleValue() / unit.denominator().doubleValue();
  }

  private static Measured metric(Measured measured) {
    return new Measured(
        metric(measured.value()), measured.standardUncertainty().map(RoundTripTest::metric));
  }
}
