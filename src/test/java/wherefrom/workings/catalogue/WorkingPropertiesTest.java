package wherefrom.workings.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Measured;
import wherefrom.workings.Inputs;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;
import wherefrom.workings.Share;

/** What must hold whatever the figures are, on seeded inputs. */
class WorkingPropertiesTest {
  private static final int RUNS = 500;

  private static Sample sample(String key) {
    return Samples.all().stream().filter(s -> s.key().equals(key)).findFirst().orElseThrow();
  }

  private static double value(String key, String result, Inputs inputs) {
    return ((Result) sample(key).working().compute(inputs)).getValue(result).value();
  }

  /** Compares a result with that for one input a little larger. */
  private static void moves(String key, String result, String input, int direction) {
    Sample sample = sample(key);
    Random random = new Random(input.hashCode());
    for (int i = 0; i < RUNS; i++) {
      Inputs inputs = sample.draw(random);
      Amount value = inputs.findMeasured(input).orElseThrow().value();
      BigDecimal step = BigDecimal.ONE.movePointLeft(value.number().scale());
      Inputs larger = inputs.with(input, new Amount(value.number().add(step), value.unit()));
      double change = value(key, result, larger) - value(key, result, inputs);
      assertThat(Math.signum(change)).as("%s of %s", result, inputs).isEqualTo(direction);
    }
  }

  @Test
  void ratioFallsAsAnyRoomAboveThePistonGrows() {
    for (String room : new String[] {"chamber", "gasket-thickness", "deck", "piston-volume"}) {
      moves("compression-ratio", "ratio", room, -1);
    }
    moves("compression-ratio", "ratio", "stroke", 1);
  }

  @Test
  void ratioRisesWithEitherCut() {
    moves("ratio-after-cut", "ratio", "head-cut", 1);
    moves("ratio-after-cut", "ratio", "deck-cut", 1);
  }

  @Test
  void chamberForARatioFallsAsTheRatioRises() {
    moves("chamber-for-ratio", "chamber", "target", -1);
  }

  @Test
  void intakeCorrectionGrowsWithTheCutAndTheLean() {
    moves("intake-correction", "face", "cut", 1);
    moves("intake-correction", "rails", "cut", 1);
    moves("intake-correction", "face", "face-angle", -1);
    moves("intake-correction", "face", "bank-angle", 1);
  }

  @Test
  void pushrodShortensWithTheCutAndLengthensWithASmallerBaseCircle() {
    moves("pushrod-length", "change", "lowering", -1);
    moves("pushrod-length", "change", "tip-rise", -1);
    moves("pushrod-length", "change", "base-radius-loss", 1);
  }

  @Test
  void valveComesNearerWithTheCutAndFartherWithTheSunkSeat() {
    moves("piston-to-valve", "clearance", "lowering", -1);
    moves("piston-to-valve", "clearance", "seat-sink", 1);
  }

  @Test
  void clearanceFallsAsTheJournalGrows() {
    moves("oil-clearance", "clearance", "journal", -1);
    moves("oil-clearance", "clearance", "housing", 1);
  }

  @Test
  void stiffestSpringHasThickWireAndFewCoils() {
    moves("spring-rate-by-wire", "rate", "wire", 1);
    moves("spring-rate-by-wire", "rate", "active-coils", -1);
    moves("spring-rate-by-wire", "rate", "outside-diameter", -1);
  }

  @Test
  void sharesOfTheBandAddUpToOneAndComeLargestFirst() {
    Random random = new Random(5);
    for (Sample sample : Samples.all()) {
      for (int i = 0; i < 50; i++) {
        Result result = (Result) sample.working().compute(sample.draw(random));
        result.values().stream()
            .filter(value -> value.standardUncertainty() > 0)
            .forEach(WorkingPropertiesTest::sharesAddUp);
      }
    }
  }

  private static void sharesAddUp(ResultValue value) {
    double sum = value.shares().stream().mapToDouble(Share::fraction).sum();
    assertThat(sum).isBetween(1 - 1e-12, 1 + 1e-12);
    for (int i = 1; i < value.shares().size(); i++) {
      assertThat(value.shares().get(i).fraction())
          .isLessThanOrEqualTo(value.shares().get(i - 1).fraction());
    }
  }

  @Test
  void aBetterMeasurementOfTheBiggestShareNarrowsTheBandMost() {
    Random random = new Random(6);
    Sample sample = sample("compression-ratio");
    for (int i = 0; i < RUNS; i++) {
      Inputs inputs = sample.draw(random);
      Result result = (Result) sample.working().compute(inputs);
      String biggest = result.getValue("ratio").findBiggestShare().orElseThrow().inputKey();
      double best = bandWithout(sample, inputs, biggest);
      for (String other : inputs.entries().keySet()) {
        assertThat(best).isLessThanOrEqualTo(bandWithout(sample, inputs, other) * (1 + 1e-12));
      }
    }
  }

  private static double bandWithout(Sample sample, Inputs inputs, String key) {
    Measured exact = Measured.of(inputs.findMeasured(key).orElseThrow().value());
    Result result = (Result) sample.working().compute(inputs.with(key, exact));
    assertThat(result.takenAsExact()).hasSize(1);
    return result.getValue("ratio").standardUncertainty();
  }
}
