package wherefrom.workings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
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
            () -> Backward.solve(working("ratio-after-cut"), inputs, "color", "ratio", nine))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static BackwardAnswer solve(
      String key, String unknown, String result, Amount wanted, String... texts) {
    InputsReading read = InputText.read(working(key), List.of(texts));
    return Backward.solve(
        working(key), ((InputsReading.Understood) read).inputs(), unknown, result, wanted);
  }

  @Test
  void aNamedLubricantNeedsNoNutFactor() {
    // "Suggested Tightening Torque Values To Produce Corresponding Bolt Clamping Loads"
    // (studylib.net, 26058660): K 0.20 dry, 3/8-16, 4,940 lb, which is 30.88 lb·ft; ±30 % of it.
    Solution dry =
        (Solution)
            solve(
                "torque",
                "preload",
                "torque",
                Amount.of("30.875", Unit.POUND_FOOT),
                "diameter=0.375in",
                "lubricant=dry");
    assertThat(dry.unknown().value()).isCloseTo(4940, within(1e-6));
    assertThat(dry.unknown().standardUncertainty())
        .isCloseTo(4940 * 0.30 / Math.sqrt(3), within(1e-6));
    Solution torque =
        (Solution)
            solve(
                "preload",
                "torque",
                "preload",
                Amount.of("4940", Unit.POUND),
                "diameter=0.375in",
                "lubricant=oiled");
    assertThat(torque.unknown().amount().in(Unit.POUND_FOOT))
        .isCloseTo(30.875 * 0.15 / 0.20, within(1e-6));
    assertThat(
            solve(
                "torque",
                "preload",
                "torque",
                Amount.of("30", Unit.POUND_FOOT),
                "diameter=0.375in",
                "lubricant=own"))
        .isInstanceOf(MissingInputs.class);
  }

  @Test
  void theReadingsOwnBandServesBackwards() {
    Solution upper =
        (Solution)
            solve(
                "accept",
                "upper",
                "accept-to",
                Amount.of("0.0020", Unit.INCH),
                "reading=0.0010in±0.0001in");
    assertThat(upper.unknown().value()).isCloseTo(0.002165, within(1e-9));
  }

  /** Every figure that a working takes, found again: nothing is refused with a tail of digits. */
  @Test
  void endsOfARangeAreWithinIt() {
    Solution gap =
        (Solution)
            solve(
                "ring-gap", "gap-per-bore", "gap", Amount.of("0.01548", Unit.INCH), "bore=3.87in");
    assertThat(gap.unknown().value()).isCloseTo(0.004, within(1e-12));
    Solution most =
        (Solution)
            solve("ring-gap", "gap-per-bore", "gap", Amount.of("0.0774", Unit.INCH), "bore=3.87in");
    assertThat(most.unknown().value()).isCloseTo(0.02, within(1e-12));
    assertThat(most.result().findNote("unusual-gap-per-bore").orElseThrow().text())
        .contains("gap per bore 0.02: usual are 0.002 to 0.01.");
    NoAnswer none =
        (NoAnswer)
            solve("ring-gap", "gap-per-bore", "gap", Amount.of("0.2", Unit.INCH), "bore=3.87in");
    assertThat(none.sentence()).doesNotContainPattern("\\d{12}");
  }

  @Test
  void aWantedResultOfAnotherKindIsRefused() {
    Nonsense refused =
        (Nonsense)
            solve(
                "ring-gap",
                "gap-per-bore",
                "gap",
                Amount.of("16", Unit.CUBIC_CENTIMETRE),
                "bore=3.87in");
    assertThat(refused.sentence()).contains("gap is a length", "16 cc");
  }

  @Test
  void anAnswerAtWhichPartsTouchSaysSo() {
    Solution deck =
        (Solution)
            solve(
                "compression-ratio",
                "deck",
                "ratio",
                Amount.ofNumber("12"),
                "bore=3.87in",
                "stroke=3.31in",
                "chamber=70cc",
                "gasket-bore=3.97in",
                "gasket-thickness=0.020in",
                "piston-volume=5cc");
    assertThat(deck.result().findNote("piston-to-head-touches").orElseThrow().text())
        .contains("The piston would hit the head");
    Solution gasket =
        (Solution)
            solve(
                "compression-ratio",
                "gasket-thickness",
                "ratio",
                Amount.ofNumber("6"),
                "bore=3.87in",
                "stroke=3.31in",
                "chamber=70cc",
                "gasket-bore=3.97in",
                "deck=0.020in",
                "piston-volume=5cc");
    assertThat(gasket.result().findNote("unusual-gasket-thickness").orElseThrow().kind())
        .isEqualTo(Note.Kind.QUESTION);
  }

  @Test
  void anOwnNutFactorScattersAsTheOthersUnlessItSaysHowMuch() {
    String[] texts = {"diameter=0.375in", "preload=4940lb", "lubricant=own", "k=0.20"};
    ResultValue own = torque(texts);
    texts[2] = "lubricant=dry";
    texts[3] = "k=0.20";
    assertThat(torque(texts).standardUncertainty()).isEqualTo(own.standardUncertainty());
    assertThat(own.standardUncertainty() / own.value())
        .isCloseTo(0.30 / Math.sqrt(3), within(1e-9));
    texts[3] = "k=0.20±0.01";
    assertThat(torque(texts).standardUncertainty() / own.value()).isCloseTo(0.05, within(1e-9));
  }

  private static ResultValue torque(String... texts) {
    InputsReading read = InputText.read(working("torque"), List.of(texts));
    Inputs inputs = ((InputsReading.Understood) read).inputs();
    return ((Result) working("torque").compute(inputs)).getValue("torque");
  }

  @Test
  void solvesOtherWorkingsToo() {
    Inputs known =
        Inputs.empty()
            .with("diameter", Amount.of("0.375", Unit.INCH))
            .withEntry("lubricant", new Entry.Choice("own"))
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
