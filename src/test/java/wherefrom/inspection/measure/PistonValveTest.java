package wherefrom.inspection.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.ResultValue;
import wherefrom.workings.catalogue.accept.Acceptance.Ruling;

/** Piston to valve, degree by degree. */
class PistonValveTest {
  private static final ReadingPlan PLAN = ReadingPlans.find("piston-valve").orElseThrow();
  private static final Tool DIAL =
      new Tool(
          "dial",
          Amount.of("0.001", Unit.INCH),
          Amount.of("0.001", Unit.INCH),
          Amount.of("0.001", Unit.INCH));

  private static List<ResultValue> read(String... inches) {
    List<Sample> samples = new ArrayList<>();
    for (int at = 0; at < inches.length; at++) {
      samples.add(new Sample(PLAN.stations().get(at), List.of(Amount.of(inches[at], Unit.INCH))));
    }
    return Results.of(PLAN, samples, DIAL, Optional.empty());
  }

  private static ResultValue get(List<ResultValue> values, String key) {
    return values.stream().filter(one -> one.key().equals(key)).findFirst().orElseThrow();
  }

  /**
   * By hand: 0.100 + 0.0004·(x − 8)² at −15 to 15 degrees, rounded to 0.001 in; the least lies
   * between two readings and below both of them.
   */
  @Test
  void theLeastLiesBetweenTheReadings() {
    List<ResultValue> values = read("0.312", "0.230", "0.168", "0.126", "0.104", "0.102", "0.120");
    assertThat(get(values, "smallest").value()).isEqualTo(0.102);
    assertThat(get(values, "least").value()).isCloseTo(0.100, within(0.0005));
    assertThat(get(values, "least-at").value()).isCloseTo(8, within(0.1));
    assertThat(get(values, "least").standardUncertainty()).isBetween(0.0005, 0.001);
  }

  /** Readings that lie 0.010 in off the curve cannot tell its least to a thousandth. */
  @Test
  void readingsOffTheCurveMakeItsLeastLessCertain() {
    List<ResultValue> values = read("0.312", "0.230", "0.158", "0.136", "0.094", "0.112", "0.120");
    assertThat(get(values, "least").standardUncertainty()).isGreaterThan(0.004);
    assertThat(limit("0.097").judge(get(values, "least")).decision()).isEqualTo(Ruling.UNDECIDED);
  }

  private static Limit limit(String lower) {
    Optional<Amount> least = Optional.of(Amount.of(lower, Unit.INCH));
    return new Limit("piston-valve", "least", least, Optional.empty(), "Manual, p. 12");
  }

  @Test
  void aLimitOnALeastThatIsNotFoundIsUndecidedAndFailsWhereAReadingDoes() {
    List<ResultValue> values = read("0.200", "0.180", "0.160", "0.140", "0.120", "0.100", "0.080");
    Judgement open = Results.judgeLacking(PLAN, values, limit("0.060")).orElseThrow();
    assertThat(open.sentence())
        .startsWith("least not between the readings, so at most 0.080")
        .contains("limit at least 0.060 in: undecided.");
    assertThat(Results.judgeLacking(PLAN, values, limit("0.090")).orElseThrow().decision())
        .isEqualTo(Ruling.REJECT);
    List<ResultValue> found = read("0.312", "0.230", "0.168", "0.126", "0.104", "0.102", "0.120");
    assertThat(Results.judgeLacking(PLAN, found, limit("0.060"))).isEmpty();
  }

  @Test
  void whereItGoesOnFallingOnlyTheSmallestReadingIsSaid() {
    List<ResultValue> values = read("0.200", "0.180", "0.160", "0.140", "0.120", "0.100", "0.080");
    assertThat(values).extracting(ResultValue::key).containsExactly("smallest");
  }
}
