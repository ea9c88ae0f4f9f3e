package wherefrom.workings.catalogue.accept;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.workings.ResultValue;
import wherefrom.workings.catalogue.Ask;

/**
 * Readings that agree to the last step do not take the step away: each is still off by up to half
 * of it, with a standard uncertainty of 0.29 of the step (JCGM 100:2008, F.2.2.1; half a step over
 * √3), and a difference of two by √2 of that.
 */
class EqualReadingsTest {
  private static String[] texts(List<String> keys, String size, String... more) {
    return Stream.concat(keys.stream().map(key -> key + "=" + size), Arrays.stream(more))
        .toArray(String[]::new);
  }

  private static final List<String> BORE =
      List.of(
          "thrust-top",
          "thrust-middle",
          "thrust-bottom",
          "axial-top",
          "axial-middle",
          "axial-bottom");
  private static final List<String> JOURNAL =
      List.of("front-vertical", "front-horizontal", "rear-vertical", "rear-horizontal");

  @ParameterizedTest
  @CsvSource({
    "bore-shape, taper",
    "bore-shape, out-of-round",
    "journal-shape, taper",
    "journal-shape, out-of-round"
  })
  void aDifferenceOfEqualReadingsKeepsBothUncertainties(String working, String result) {
    boolean bore = working.equals("bore-shape");
    String[] texts =
        bore
            ? texts(BORE, "3.8705in±0.000029in", "nominal=3.8700in")
            : texts(JOURNAL, "2.2390in±0.000029in", "standard=2.2400in");
    ResultValue value = Ask.result(working, texts).getValue(result);
    assertThat(value.value()).isZero();
    assertThat(value.standardUncertainty()).isCloseTo(0.000029 * Math.sqrt(2), within(1e-9));
    assertThat(value.text()).contains("±");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "chain-deflection|deflection|inward=1.000mm±0.003mm outward=1.000mm±0.003mm",
        "cam-slack|slack|forward=3deg±0.003deg backward=3deg±0.003deg",
        "retainer-to-seal|margin|seal-gap=10mm±0.003mm lift=10mm±0.003mm",
        "journal-shape|wear|front-vertical=50mm±0.003mm front-horizontal=50mm±0.003mm"
            + " rear-vertical=50mm±0.003mm rear-horizontal=50mm±0.003mm standard=50mm±0.003mm"
      })
  void soDoesEveryOtherDifference(String working, String result, String inputs) {
    ResultValue value = Ask.result(working, inputs.split(" ")).getValue(result);
    assertThat(value.value()).isZero();
    assertThat(value.standardUncertainty()).isCloseTo(0.003 * Math.sqrt(2), within(1e-9));
  }

  @Test
  void tiesAmongSomeReadingsTakeTwoReadingsToo() {
    String[] texts = texts(BORE, "3.8705in±0.0001in", "nominal=3.8700in");
    texts[0] = "thrust-top=3.8715in±0.0001in";
    texts[3] = "axial-top=3.8715in±0.0001in";
    ResultValue taper = Ask.result("bore-shape", texts).getValue("taper");
    assertThat(taper.value()).isCloseTo(0.0010, within(1e-12));
    assertThat(taper.standardUncertainty()).isCloseTo(0.0001 * Math.sqrt(2), within(1e-9));
  }
}
