package wherefrom.workings.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wherefrom.quantity.Measured;
import wherefrom.workings.Entry;
import wherefrom.workings.Evaluations;
import wherefrom.workings.Figure;
import wherefrom.workings.Inputs;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;
import wherefrom.workings.Values;
import wherefrom.workings.Working;

/**
 * Every band against a Monte Carlo run (JCGM 101:2008, normal inputs). A sample standard deviation
 * of N draws is itself uncertain by 1/√(2N) of its size; five times that is the bound for one input
 * set, and for the mean over all sets, which finds small systematic errors.
 */
class MonteCarloTest {
  private static final int SETS = 200;
  private static final int DRAWS = 150;
  private static final double ERRORS = 5;

  /** Running mean and spread of one result. */
  private static final class Tally {
    private final ResultValue value;
    private final double perBase;
    private double sum;
    private double squares;

    Tally(ResultValue value) {
      this.value = value;
      this.perBase =
          value.unit().denominator().doubleValue() / value.unit().numerator().doubleValue();
    }

    void add(double inBase) {
      double offset = inBase * perBase - value.value();
      sum += offset;
      squares += offset * offset;
    }

    double mean() {
      return sum / DRAWS;
    }

    double deviation() {
      return Math.sqrt((squares - sum * sum / DRAWS) / (DRAWS - 1));
    }
  }

  static List<String> keys() {
    return Samples.all().stream().map(Sample::key).filter(key -> !key.equals("accept")).toList();
  }

  @ParameterizedTest
  @MethodSource("keys")
  void bandsAgreeWithinTheRunsOwnError(String key) {
    Sample sample =
        Samples.all().stream().filter(s -> s.key().equals(key)).findFirst().orElseThrow();
    Random random = new Random(7);
    Map<String, Double> ratios = new HashMap<>();
    for (int i = 0; i < SETS; i++) {
      Inputs inputs = sample.draw(random);
      checkSet(sample.working(), inputs, random, ratios);
    }
    assertThat(ratios.keySet()).containsAll(sample.references().keySet());
    double bound = ERRORS / Math.sqrt(2.0 * DRAWS * SETS);
    ratios.forEach(
        (result, sum) ->
            assertThat(Math.abs(sum / SETS - 1)).as("mean of %s", result).isLessThan(bound));
  }

  /** One input's middle and spread, in base units. */
  private record Bell(double middle, double deviation) {
    static Bell of(Measured measured) {
      double u = measured.standardUncertainty().map(a -> a.inBase().doubleValue()).orElse(0.0);
      return new Bell(measured.value().inBase().doubleValue(), u);
    }

    double draw(Random random) {
      return middle + deviation * random.nextGaussian();
    }
  }

  private static void checkSet(
      Working working, Inputs inputs, Random random, Map<String, Double> ratios) {
    Result result = (Result) working.compute(inputs);
    Map<String, Bell> bells = bells(inputs);
    Map<String, Double> figures = new HashMap<>();
    Map<String, Tally> tallies = new HashMap<>();
    Evaluations evaluations = new Evaluations(working, inputs);
    for (int n = 0; n < DRAWS; n++) {
      bells.forEach((key, bell) -> figures.put(key, bell.draw(random)));
      for (Figure figure : ((Values) evaluations.evaluate(figures)).figures()) {
        tallies
            .computeIfAbsent(figure.key(), k -> new Tally(result.getValue(k)))
            .add(figure.inBase().toDouble());
      }
    }
    tallies.forEach((key, tally) -> check(key, tally, ratios));
  }

  private static Map<String, Bell> bells(Inputs inputs) {
    Map<String, Bell> bells = new TreeMap<>();
    inputs
        .entries()
        .forEach(
            (key, entry) -> {
              if (entry instanceof Entry.Figure figure) {
                bells.put(key, Bell.of(figure.measured()));
              }
            });
    return bells;
  }

  private static void check(String key, Tally tally, Map<String, Double> ratios) {
    double u = tally.value.standardUncertainty();
    if (u > 0) {
      compare(tally.value, tally);
      ratios.merge(key, tally.deviation() / u, Double::sum);
    } else {
      assertThat(tally.deviation()).as(key).isZero();
    }
  }

  private static void compare(ResultValue value, Tally tally) {
    double u = value.standardUncertainty();
    assertThat(Math.abs(tally.deviation() / u - 1))
        .as("band of %s", value)
        .isLessThan(ERRORS / Math.sqrt(2.0 * DRAWS));
    assertThat(Math.abs(tally.mean()) / u)
        .as("middle of %s", value)
        .isLessThan(ERRORS / Math.sqrt(DRAWS));
  }
}
