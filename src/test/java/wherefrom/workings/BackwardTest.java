package wherefrom.workings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Measured;
import wherefrom.quantity.Unit;
import wherefrom.workings.catalogue.Workings;

class BackwardTest {
  private static final int RUNS = 25;

  private static Working working(String key) {
    return Workings.find(key).orElseThrow();
  }

  private static Measured mm(Random random, double least, double most) {
    return measured(random, least, most, Unit.MILLIMETRE, "0.01");
  }

  private static Measured cc(Random random, double least, double most) {
    return measured(random, least, most, Unit.CUBIC_CENTIMETRE, "0.3");
  }

  private static Measured measured(
      Random random, double least, double most, Unit unit, String uncertainty) {
    BigDecimal size =
        BigDecimal.valueOf(Math.round(1000 * (least + (most - least) * random.nextDouble())), 3);
    return Measured.of(new Amount(size, unit), Amount.of(uncertainty, unit));
  }

  private static Inputs inputs(Random random) {
    return Inputs.empty()
        .with("bore", mm(random, 70, 130))
        .with("stroke", mm(random, 60, 120))
        .with("gasket-bore", mm(random, 80, 140))
        .with("gasket-thickness", mm(random, 0.3, 2))
        .with("deck", mm(random, -0.5, 2))
        .with("piston-volume", cc(random, -8, 20))
        .with("chamber", cc(random, 60, 120))
        .with("head-cut", mm(random, 0.2, 1.5))
        .with("deck-cut", mm(random, 0, 0.5))
        .with("opening", measured(random, 4, 8, Unit.CC_PER_MILLIMETRE, "0.1"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "chamber",
        "head-cut",
        "deck-cut",
        "gasket-thickness",
        "deck",
        "piston-volume",
        "bore",
        "stroke",
        "opening",
        "gasket-bore"
      })
  void findsAnyOneFigureOfTheRatio(String unknown) {
    Random random = new Random(unknown.hashCode());
    Working working = working("ratio-after-cut");
    for (int i = 0; i < RUNS; i++) {
      Inputs inputs = inputs(random);
      Result result = (Result) working.compute(inputs);
      BackwardAnswer answer =
          Backward.solve(
              working,
              inputs.without(unknown),
              unknown,
              "ratio",
              result.getValue("ratio").amount());
      assertThat(answer).as("%s", inputs).isInstanceOf(Solution.class);
      double expected = inputs.findMeasured(unknown).orElseThrow().value().inBase().doubleValue();
      double got = ((Solution) answer).unknown().amount().inBase().doubleValue();
      double ratioPerUnknown = 1e-9 * Math.max(1, Math.abs(expected));
      assertThat(got)
          .isCloseTo(expected, within(unknown.equals("opening") ? 1e-3 : ratioPerUnknown));
    }
  }

  @Test
  void bandOfTheChamberIsThatOfTheForwardWorking() {
    Random random = new Random(8);
    for (int i = 0; i < RUNS; i++) {
      Inputs inputs = inputs(random).without("head-cut").without("deck-cut").without("opening");
      Amount target = Amount.of("9.25", Unit.ONE);
      Inputs known = inputs.without("chamber");
      WorkingAnswer forward = working("chamber-for-ratio").compute(known.with("target", target));
      BackwardAnswer backward =
          Backward.solve(working("compression-ratio"), known, "chamber", "ratio", target);
      if (forward instanceof Result result) {
        ResultValue expected = result.getValue("chamber");
        ResultValue got = ((Solution) backward).unknown();
        assertThat(got.value()).isCloseTo(expected.value(), within(1e-9));
        assertThat(got.standardUncertainty())
            .isCloseTo(expected.standardUncertainty(), within(1e-9));
        assertThat(got.findBiggestShare().orElseThrow().inputKey())
            .isEqualTo(expected.findBiggestShare().orElseThrow().inputKey());
      } else {
        assertThat(backward).isInstanceOf(NoAnswer.class);
      }
    }
  }

  @Test
  void keepsTheUnitTheUnknownWasEnteredIn() {
    Inputs inputs = inputs(new Random(1)).with("gasket-thickness", Amount.of("0.04", Unit.INCH));
    Solution solution =
        (Solution)
            Backward.solve(
                working("ratio-after-cut"),
                inputs,
                "gasket-thickness",
                "ratio",
                ((Result) working("ratio-after-cut").compute(inputs)).getValue("ratio").amount());
    assertThat(solution.unknown().unit()).isEqualTo(Unit.INCH);
    assertThat(solution.unknown().value()).isCloseTo(0.04, within(1e-12));
  }

  @Test
  void saysWhenThereIsNoAnswer() {
    Inputs inputs = inputs(new Random(2));
    NoAnswer answer =
        (NoAnswer)
            Backward.solve(
                working("ratio-after-cut"),
                inputs,
                "gasket-thickness",
                "ratio",
                Amount.ofNumber("45"));
    assertThat(answer.sentence()).contains("gasket thickness", "45", "stays between");
    assertThat(
            Backward.solve(
                working("ratio-after-cut"), inputs, "chamber", "ratio", Amount.ofNumber("0.9")))
        .isInstanceOf(NoAnswer.class);
  }

  @Test
  void asksForWhatIsMissingAndRefusesNonsense() {
    Inputs inputs = inputs(new Random(3));
    Amount nine = Amount.ofNumber("9");
    assertThat(
            Backward.solve(
                working("ratio-after-cut"), inputs.without("bore"), "chamber", "ratio", nine))
        .isInstanceOf(MissingInputs.class);
    assertThat(
            Backward.solve(
                working("ratio-after-cut"),
                inputs.with("stroke", Amount.of("-3", Unit.INCH)),
                "chamber",
                "ratio",
                nine))
        .isInstanceOf(Nonsense.class);
    assertThat(
            Backward.solve(
                working("ratio-after-cut"),
                inputs.with("crevice-gap", Amount.of("1", Unit.MILLIMETRE)),
                "chamber",
                "ratio",
                nine))
        .isInstanceOf(MissingInputs.class);
    assertThatThrownBy(
            () -> Backward.solve(working("ratio-after-cut"), inputs, "colour", "ratio", nine))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void solvesOtherWorkingsToo() {
    Inputs known =
        Inputs.empty()
            .with("diameter", Amount.of("0.375", Unit.INCH))
            .withChoice("lubricant", "own")
            .with("k", Amount.ofNumber("0.2"));
    Solution preload =
        (Solution)
            Backward.solve(
                working("torque"),
                known,
                "preload",
                "torque",
                Amount.of("30.875", Unit.POUND_FOOT));
    assertThat(preload.unknown().value()).isCloseTo(4940, within(1e-6));
  }
}
