package wherefrom.workings.catalogue.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;
import wherefrom.workings.WorkingAnswer;
import wherefrom.workings.catalogue.Ask;

/**
 * The next over- and undersize for every wear there is, one step of the gauge at a time, against
 * whole numbers: wear is one-sided, so twice as much must come off (common practice, no source; the
 * steps of crankshafts are those of TM 5-3805-262-34, 4-24, all others from memory).
 */
class SizeStepTest {
  /** Ten-thousandths of an inch. */
  private static final int[] INCH_UNDER = {0, 100, 200, 300};

  private static final int[] INCH_OVER = {0, 100, 200, 300, 400, 600};

  /** Thousandths of a millimetre. */
  private static final int[] METRIC_UNDER = {0, 250, 500, 750};

  private static final int[] METRIC_OVER = {0, 250, 500, 750, 1000, 1500};

  private static OptionalInt step(int[] steps, int wear) {
    return Arrays.stream(steps).filter(step -> step >= 2 * wear).findFirst();
  }

  private static String size(int whole, int perUnit, String unit) {
    return String.format(Locale.ROOT, "%.4f%s", (double) whole / perUnit, unit);
  }

  private static double found(WorkingAnswer answer, String key) {
    return ((Result) answer)
        .values().stream()
            .filter(value -> value.key().equals(key))
            .mapToDouble(ResultValue::value)
            .findFirst()
            .orElse(Double.NaN);
  }

  private static void undersizes(int[] steps, int standard, int perUnit, String unit) {
    for (int wear = 0; wear <= 450; wear++) {
      WorkingAnswer answer =
          Ask.answer(
              "next-undersize",
              "standard=" + size(standard, perUnit, unit),
              "smallest=" + size(standard - wear, perUnit, unit));
      OptionalInt wanted = step(steps, wear);
      if (wanted.isEmpty()) {
        assertThat(answer).isInstanceOf(Nonsense.class);
      } else {
        double size = (double) wanted.getAsInt() / perUnit;
        assertThat(found(answer, "undersize")).as("wear %d", wear).isCloseTo(size, within(1e-12));
        assertThat(found(answer, "diameter"))
            .isCloseTo((double) standard / perUnit - size, within(1e-12));
      }
    }
  }

  @Test
  void undersizeIsTheFirstThatCleansUpEveryWear() {
    undersizes(INCH_UNDER, 27_480, 10_000, "in");
    undersizes(METRIC_UNDER, 69_800, 1_000, "mm");
  }

  private static void shapes(
      int[] steps, int direction, String working, int base, int perUnit, String unit) {
    String size = direction > 0 ? "nominal" : "standard";
    String result = direction > 0 ? "oversize" : "undersize";
    String[] readings =
        direction > 0
            ? new String[] {
              "thrust-top",
              "thrust-middle",
              "thrust-bottom",
              "axial-top",
              "axial-middle",
              "axial-bottom"
            }
            : new String[] {
              "front-vertical", "front-horizontal", "rear-vertical", "rear-horizontal"
            };
    for (int wear = -20; wear <= 850; wear++) {
      String[] texts = new String[readings.length + 1];
      for (int i = 0; i < readings.length; i++) {
        int worn = i == Math.floorMod(wear, readings.length) ? wear : wear - 1 - i;
        texts[i] = readings[i] + "=" + size(base + direction * worn, perUnit, unit);
      }
      texts[readings.length] = size + "=" + size(base, perUnit, unit);
      double answer = found(Ask.answer(working, texts), result);
      OptionalInt wanted = step(steps, Math.max(0, wear));
      if (wanted.isEmpty()) {
        assertThat(answer).as("wear %d", wear).isNaN();
      } else {
        assertThat(answer)
            .as("wear %d", wear)
            .isCloseTo((double) wanted.getAsInt() / perUnit, within(1e-12));
      }
    }
  }

  @Test
  void oversizeOfABoreIsTheFirstThatCleansUpItsWorstReading() {
    shapes(INCH_OVER, 1, "bore-shape", 40_000, 10_000, "in");
    shapes(METRIC_OVER, 1, "bore-shape", 101_600, 1_000, "mm");
  }

  @Test
  void undersizeOfAJournalIsTheFirstThatCleansUpItsWorstReading() {
    shapes(INCH_UNDER, -1, "journal-shape", 24_490, 10_000, "in");
    shapes(METRIC_UNDER, -1, "journal-shape", 62_200, 1_000, "mm");
  }

  /**
   * A surface that was cut before: wear counts from the cut, the step from standard. A cut up to
   * 0.002 in or 0.05 mm off a step is meant to be that step (common practice, no source).
   */
  private static void afterACut(
      int[] steps, int direction, String working, int base, int perUnit, String unit, int near) {
    String size = direction > 0 ? "nominal" : "standard";
    String result = direction > 0 ? "oversize" : "undersize";
    List<String> readings =
        switch (working) {
          case "bore-shape" ->
              List.of(
                  "thrust-top",
                  "thrust-middle",
                  "thrust-bottom",
                  "axial-top",
                  "axial-middle",
                  "axial-bottom");
          case "journal-shape" ->
              List.of("front-vertical", "front-horizontal", "rear-vertical", "rear-horizontal");
          default -> List.of("smallest");
        };
    for (int cut = 0; cut <= steps[steps.length - 1]; cut += 5) {
      int at = cut;
      int meant =
          Arrays.stream(steps).filter(step -> Math.abs(step - at) <= near).findFirst().orElse(at);
      for (int wear = 0; wear <= 60; wear += 7) {
        int needed = meant + 2 * wear;
        OptionalInt wanted = Arrays.stream(steps).filter(step -> step >= needed).findFirst();
        String worn = size(base + direction * (cut + wear), perUnit, unit);
        List<String> inputs = new java.util.ArrayList<>();
        readings.forEach(reading -> inputs.add(reading + "=" + worn));
        inputs.add(size + "=" + size(base, perUnit, unit));
        inputs.add("as-cut=" + size(base + direction * cut, perUnit, unit));
        WorkingAnswer answer = Ask.answer(working, inputs.toArray(String[]::new));
        if (wanted.isPresent()) {
          assertThat(found(answer, result))
              .as("%s cut %d wear %d", working, cut, wear)
              .isCloseTo((double) wanted.getAsInt() / perUnit, within(1e-12));
        } else if (answer instanceof Result) {
          assertThat(found(answer, result)).as("cut %d wear %d", cut, wear).isNaN();
        } else {
          assertThat(answer).isInstanceOf(Nonsense.class);
        }
      }
    }
  }

  @Test
  void theNextStepAfterACutCountsFromStandard() {
    afterACut(INCH_UNDER, -1, "next-undersize", 27_480, 10_000, "in", 20);
    afterACut(METRIC_UNDER, -1, "next-undersize", 69_800, 1_000, "mm", 50);
    afterACut(INCH_UNDER, -1, "journal-shape", 24_490, 10_000, "in", 20);
    afterACut(METRIC_UNDER, -1, "journal-shape", 62_200, 1_000, "mm", 50);
    afterACut(INCH_OVER, 1, "bore-shape", 40_000, 10_000, "in", 20);
    afterACut(METRIC_OVER, 1, "bore-shape", 101_600, 1_000, "mm", 50);
  }

  /** TM 5-3805-262-34, 4-24: 2.748 in ground to 2.738, 2.728 and 2.718 in. */
  @Test
  void aJournalAsGroundByAnArmyManualNeedsNoFurtherStep() {
    String[] ground = {"2.738", "2.728", "2.718"};
    double[] under = {0.010, 0.020, 0.030};
    for (int at = 0; at < ground.length; at++) {
      WorkingAnswer answer =
          Ask.answer(
              "next-undersize",
              "standard=2.748in",
              "as-cut=" + ground[at] + "in",
              "smallest=" + ground[at] + "in");
      assertThat(found(answer, "undersize")).isCloseTo(under[at], within(1e-12));
      assertThat(found(answer, "diameter"))
          .isCloseTo(Double.parseDouble(ground[at]), within(1e-12));
    }
  }
}
