package wherefrom.workings.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wherefrom.workings.Inputs;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;
import wherefrom.workings.Working;
import wherefrom.workings.catalogue.accept.AcceptanceChanceTest;

/** Every working against the same formula written anew with 50-digit decimals. */
class PrecisionTest {
  private static final int DRAWS = 10_000;
  private static final double MOST = 1e-12;

  static java.util.List<String> keys() {
    return Samples.all().stream().map(Sample::key).toList();
  }

  @ParameterizedTest
  @MethodSource("keys")
  void agreesWithFiftyDigitsOnTenThousandInputs(String key) {
    Sample sample =
        Samples.all().stream().filter(s -> s.key().equals(key)).findFirst().orElseThrow();
    assertThat(sample.references()).isNotEmpty();
    assertThat(worstError(sample, DRAWS)).isLessThanOrEqualTo(MOST);
  }

  /** The worst relative error of all results over so many inputs. */
  static double worstError(Sample sample, int draws) {
    Working working = sample.working();
    Random random = new Random(20_261);
    double worst = 0;
    for (int i = 0; i < draws; i++) {
      Inputs inputs = sample.draw(random);
      Sample.Given given = new Sample.Given(inputs);
      Result result = (Result) working.compute(inputs);
      for (Map.Entry<String, Function<Sample.Given, Big>> e : sample.references().entrySet()) {
        Big expected = e.getValue().apply(given);
        worst = Math.max(worst, relativeError(result.getValue(e.getKey()), expected));
      }
    }
    return worst;
  }

  private static double relativeError(ResultValue value, Big inBase) {
    BigDecimal got = new BigDecimal(value.value()).multiply(value.unit().numerator());
    BigDecimal expected = inBase.value().multiply(value.unit().denominator());
    BigDecimal off = got.subtract(expected);
    if (expected.signum() == 0) {
      return off.signum() == 0 ? 0 : Double.POSITIVE_INFINITY;
    }
    return Math.abs(off.doubleValue() / expected.doubleValue());
  }

  @Test
  void everyWorkingHasASample() {
    Set<String> sampled = Samples.all().stream().map(Sample::key).collect(Collectors.toSet());
    Set<String> listed = Workings.all().stream().map(Working::key).collect(Collectors.toSet());
    assertThat(new TreeSet<>(sampled)).isEqualTo(new TreeSet<>(listed));
  }

  /** Steps of a table, and the chance that {@link AcceptanceChanceTest} looks at. */
  private static final Set<String> CHECKED_ELSEWHERE =
      Set.of("oversize", "undersize", "diameter", "probability");

  @Test
  void everyFigureOfEveryResultIsWorkedOutAnew() {
    Random random = new Random(20_262);
    for (Sample sample : Samples.all()) {
      for (int i = 0; i < 20; i++) {
        Result result = (Result) sample.working().compute(sample.draw(random));
        assertThat(result.values().stream().map(ResultValue::key))
            .as(sample.key())
            .filteredOn(key -> !CHECKED_ELSEWHERE.contains(key))
            .containsExactlyInAnyOrderElementsOf(sample.references().keySet());
      }
    }
  }
}
