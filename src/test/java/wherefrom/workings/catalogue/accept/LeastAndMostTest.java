package wherefrom.workings.catalogue.accept;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Result;
import wherefrom.workings.catalogue.Ask;

/**
 * What is marked, and from where on: nothing at the figure itself, and a mark one step of the gauge
 * beyond it. The figures are from memory (see each working's source), so the mark is a caution.
 */
class LeastAndMostTest {
  private static final String FLAT =
      "bore=3.87in stroke=3.31in gasket-bore=3.97in deck=0in piston-volume=0cc chamber=63cc head-cut=0in"
          + " deck-cut=0in opening=0.165cc/thou ";

  private static Result result(String working, String inputs) {
    return Ask.result(working, inputs.replace("FLAT ", FLAT).split(" "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "coil-bind|coil-bind-near|installed-height=1.700in solid-height=1.150in"
            + " lift=|0.4900|0.4901",
        "retainer-to-seal|seal-near|seal-gap=0.500in lift=|0.4500|0.4501",
        "piston-to-valve|valve-near|lowering=0in valve-tilt=12deg crown=flat seat-sink=0in"
            + " side=intake clearance-now=|0.0800|0.0799",
        "piston-to-valve|valve-near|lowering=0in valve-tilt=12deg crown=pocket seat-sink=0in"
            + " side=exhaust clearance-now=|0.1000|0.0999",
        "ratio-after-cut|piston-to-head-small|FLAT gasket-thickness=|0.0350|0.0349",
        "ratio-after-cut|gasket-in-bore|FLAT gasket-thickness=0.040in gasket-bore=|3.8700|3.8699",
      })
  void marginIsMarkedOneStepBeyondItsLeast(
      String working, String note, String inputs, String at, String beyond) {
    String others = note.equals("gasket-in-bore") ? inputs.replace("FLAT ", bare()) : inputs;
    assertThat(result(working, others + at + "in").findNote(note)).isEmpty();
    assertThat(result(working, others + beyond + "in").findNote(note)).isPresent();
  }

  private static String bare() {
    return FLAT.replace("gasket-bore=3.97in ", "");
  }

  @Test
  void slackIsMarkedFromFiveDegreesOn() {
    assertThat(result("cam-slack", "forward=5.0deg backward=0deg").findNote("slack-large"))
        .isEmpty();
    assertThat(result("cam-slack", "forward=5.0deg backward=-0.1deg").findNote("slack-large"))
        .isPresent();
  }

  /** ISO 14253-1:2017 (secondary texts), g = 1.65·0.000131 in = 0.000216 in, own figures. */
  @ParameterizedTest
  @CsvSource({
    "0.00078, reject",
    "0.00079, undecided",
    "0.00121, undecided",
    "0.00122, accept",
    "0.00228, accept",
    "0.00229, undecided",
    "0.00271, undecided",
    "0.00272, reject"
  })
  void decisionTurnsWhereTheGuardBandEnds(double reading, String word) {
    Result result =
        result(
            "accept",
            String.format(
                Locale.ROOT,
                "reading=%.5fin uncertainty=0.000131in lower=0.0010in upper=0.0025in",
                reading));
    assertThat(result.findNote(word)).isPresent();
  }

  @Test
  void manifoldFaceMustLieBetweenHalfTheBankAngleAndSquareToIt() {
    String cut = "cut=1mm bank-angle=60deg face-angle=";
    assertThat(Ask.answer("intake-correction", (cut + "119.9deg").split(" ")))
        .isInstanceOf(Result.class);
    assertThat(Ask.answer("intake-correction", (cut + "120deg").split(" ")))
        .isInstanceOf(Nonsense.class);
    assertThat(Ask.answer("intake-correction", (cut + "30.1deg").split(" ")))
        .isInstanceOf(Result.class);
    assertThat(Ask.answer("intake-correction", (cut + "30deg").split(" ")))
        .isInstanceOf(Nonsense.class);
  }
}
