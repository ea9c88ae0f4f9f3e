package wherefrom.workings.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Measured;
import wherefrom.workings.Inputs;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;
import wherefrom.workings.Share;
import wherefrom.workings.Working;

/** What must hold whatever the figures are, on seeded inputs. */
class WorkingPropertiesTest {
  private static final int RUNS = 500;

  private static Sample sample(String key) {
    return Samples.all().stream().filter(s -> s.key().equals(key)).findFirst().orElseThrow();
  }

  private static double value(String key, String result, Inputs inputs) {
    return ((Result) sample(key).working().compute(inputs)).getValue(result).value();
  }

  /** Which way a result goes when one input grows: 1 up, -1 down. */
  record Move(String working, String result, String input, int direction) {}

  static List<Move> moves() {
    return List.of(
        new Move("swept-volume", "engine", "bore", 1),
        new Move("swept-volume", "cylinder", "stroke", 1),
        new Move("compression-ratio", "ratio", "chamber", -1),
        new Move("compression-ratio", "ratio", "gasket-thickness", -1),
        new Move("compression-ratio", "ratio", "deck", -1),
        new Move("compression-ratio", "ratio", "piston-volume", -1),
        new Move("compression-ratio", "ratio", "stroke", 1),
        new Move("chamber-for-ratio", "chamber", "target", -1),
        new Move("head-cut", "cut", "chamber-wanted", -1),
        new Move("head-cut", "cut", "chamber-now", 1),
        new Move("head-cut", "cut", "opening", -1),
        new Move("opening-by-pour", "opening", "depth", -1),
        new Move("deck-cut", "cut", "target", 1),
        new Move("deck-cut", "piston-to-head", "target", -1),
        new Move("ratio-after-cut", "ratio", "head-cut", 1),
        new Move("ratio-after-cut", "ratio", "deck-cut", 1),
        new Move("intake-correction", "face", "cut", 1),
        new Move("intake-correction", "rails", "cut", 1),
        new Move("intake-correction", "face", "face-angle", -1),
        new Move("intake-correction", "face", "bank-angle", 1),
        new Move("valve-lift", "lift", "rocker-ratio", 1),
        new Move("valve-lift", "lift", "lash", -1),
        new Move("coil-bind", "margin", "lift", -1),
        new Move("coil-bind", "margin", "installed-height", 1),
        new Move("coil-bind", "margin", "wire", -1),
        new Move("retainer-to-seal", "margin", "lift", -1),
        new Move("spring-rate", "rate", "load-2", 1),
        new Move("spring-rate", "rate", "height-1", -1),
        new Move("spring-rate-by-wire", "rate", "wire", 1),
        new Move("spring-rate-by-wire", "rate", "active-coils", -1),
        new Move("spring-rate-by-wire", "rate", "outside-diameter", -1),
        new Move("spring-loads", "seat", "installed-height", -1),
        new Move("spring-loads", "open", "lift", 1),
        new Move("pushrod-length", "change", "lowering", -1),
        new Move("pushrod-length", "change", "tip-rise", -1),
        new Move("pushrod-length", "change", "base-radius-loss", 1),
        new Move("oil-clearance", "clearance", "journal", -1),
        new Move("oil-clearance", "clearance", "housing", 1),
        new Move("oil-clearance-one-wall", "clearance", "wall", -1),
        new Move("oil-clearance-bore", "per-diameter", "journal", -1),
        new Move("next-undersize", "clean-up", "smallest", 1),
        new Move("strip-clearance", "clearance", "width", -1),
        new Move("strip-width", "width", "clearance", -1),
        new Move("torque", "torque", "preload", 1),
        new Move("torque", "torque", "k", 1),
        new Move("preload", "preload", "diameter", -1),
        new Move("preload", "preload", "k", -1),
        new Move("angle-stage", "travel", "angle", 1),
        new Move("cylinder-compression", "share", "dry", 1),
        new Move("cylinder-compression", "share", "highest", -1),
        new Move("cylinder-compression", "rise", "wet", 1),
        new Move("leak-down", "leak", "held", -1),
        new Move("leak-down", "leak", "supply", 1),
        new Move("ring-gap", "gap", "bore", 1),
        new Move("ring-gap-change", "change", "bore-change", 1),
        new Move("bore-shape", "wear", "nominal", -1),
        new Move("bore-shape", "clean-up", "nominal", -1),
        new Move("journal-shape", "wear", "standard", 1),
        new Move("piston-to-valve", "clearance", "lowering", -1),
        new Move("piston-to-valve", "clearance", "seat-sink", 1),
        new Move("chain-deflection", "deflection", "inward", -1),
        new Move("cam-slack", "slack", "forward", 1),
        new Move("top-dead-center", "center", "before", 1),
        new Move("accept", "guard-band", "uncertainty", 1),
        new Move("accept", "accept-to", "uncertainty", -1),
        new Move("accept", "reject-below", "uncertainty", -1));
  }

  @ParameterizedTest
  @MethodSource("moves")
  void resultGoesOneWayAsAnInputGrows(Move move) {
    Sample sample = sample(move.working());
    Random random = new Random(move.input().hashCode());
    for (int i = 0; i < RUNS; i++) {
      Inputs inputs = sample.draw(random);
      Amount value = inputs.findMeasured(move.input()).orElseThrow().value();
      BigDecimal step = BigDecimal.ONE.movePointLeft(value.number().scale());
      Amount grown = new Amount(value.number().add(step), value.unit());
      double change =
          value(move.working(), move.result(), inputs.with(move.input(), grown))
              - value(move.working(), move.result(), inputs);
      assertThat(Math.signum(change)).as("%s", inputs).isEqualTo(move.direction());
    }
  }

  @Test
  void everyWorkingHasSuchAProperty() {
    assertThat(moves().stream().map(Move::working).collect(Collectors.toSet()))
        .isEqualTo(Workings.all().stream().map(Working::key).collect(Collectors.toSet()));
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
