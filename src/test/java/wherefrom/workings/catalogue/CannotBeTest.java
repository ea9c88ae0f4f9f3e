package wherefrom.workings.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Note;
import wherefrom.workings.Result;
import wherefrom.workings.UsualFigures;
import wherefrom.workings.catalogue.basis.Gap;
import wherefrom.workings.plan.PlanInputs;

/** Results that cannot be are refused, parts that would touch are named, odd figures asked back. */
class CannotBeTest {
  private static final String SPACE =
      "bore=3.87in stroke=3.31in gasket-bore=3.97in gasket-thickness=0.040in piston-volume=6cc ";

  private static Result result(String working, String inputs) {
    return Ask.result(working, inputs.replace("SPACE ", SPACE).split(" "));
  }

  /** At nothing left and below; one step of the gauge above it parts are near, but do not touch. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "compression-ratio|PISTON_TO_HEAD|SPACE chamber=63cc deck=|-0.0400in|-0.0399in",
        "chamber-for-ratio|PISTON_TO_HEAD|SPACE target=9 deck=|-0.0400in|-0.0399in",
        "ratio-after-cut|PISTON_TO_HEAD|SPACE chamber=63cc deck=0in head-cut=0in"
            + " opening=0.165cc/thou deck-cut=|0.0400in|0.0399in",
        "deck-cut|PISTON_TO_HEAD|SPACE chamber=63cc deck=0.025in target=|10.3|10.1",
        "coil-bind|COIL_BIND|installed-height=1.7in solid-height=1.2in lift=|0.5001in|0.4999in",
        "retainer-to-seal|RETAINER_TO_SEAL|seal-gap=0.5in lift=|0.5in|0.4999in",
        "piston-to-valve|PISTON_TO_INTAKE|clearance-now=0.1in valve-tilt=0deg crown=flat"
            + " seat-sink=0in side=intake lowering=|0.1in|0.0999in",
        "piston-to-valve|PISTON_TO_EXHAUST|clearance-now=0.1in valve-tilt=0deg crown=pocket"
            + " seat-sink=0in side=exhaust lowering=|0.1001in|0.0999in"
      })
  void partsThatWouldTouchAreNamed(
      String working, Gap gap, String inputs, String touching, String apart) {
    String key = gap.key() + "-touches";
    Note note = result(working, inputs + touching).findNote(key).orElseThrow();
    assertThat(note.kind()).isEqualTo(Note.Kind.CAUTION);
    assertThat(note.text()).startsWith(gap.touchWords() + ": short by ");
    assertThat(result(working, inputs + apart).findNote(key)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "valve-lift|lash|lobe-lift=0.3in rocker-ratio=1.5 lash=0.45in",
        "strip-width|clearance|strand=0.010in clearance=0.008in",
        "spring-loads|lift|rate=200lbf/in load=90lb at-height=1.7in installed-height=1.7in"
            + " lift=1.7in",
        "compression-ratio|crevice-gap|SPACE chamber=63cc deck=0in crevice-gap=60mm"
            + " crevice-height=8mm"
      })
  void whatCannotBeIsRefused(String working, String field, String inputs) {
    Nonsense refused = Ask.nonsense(working, inputs.replace("SPACE ", SPACE).split(" "));
    assertThat(refused.field()).isEqualTo(field);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "swept-volume|unusual-bore|stroke=3.31in cylinders=8 bore=|3.87mm|3.87in|Was it 3.87 in?",
        "compression-ratio|unusual-deck|SPACE chamber=63cc deck=|0.5in|0.5mm|Was it 0.5 mm?",
        "compression-ratio|unusual-chamber|SPACE deck=0in chamber=|700cc|70cc|3 cc to 300 cc",
        "compression-ratio|unusual-ratio|SPACE deck=0in chamber=|30cc|70cc|gasoline engines have 5"
            + " to 14",
        "oil-clearance-bore|clearance-wide|journal=2.24in inside=|2.2600in|2.2420in|0.001 in per"
            + " in",
        "head-cut|cut-deep|chamber-now=72cc opening=0.165cc/thou chamber-wanted=|40cc|66cc|Read"
      })
  void anOddFigureIsAskedBackAndStillWorkedOut(
      String working, String key, String inputs, String odd, String usual, String words) {
    Result asked = result(working, inputs + odd);
    assertThat(asked.findNote(key).orElseThrow().kind()).isEqualTo(Note.Kind.QUESTION);
    assertThat(asked.findNote(key).orElseThrow().text()).contains(words);
    assertThat(asked.values()).isNotEmpty();
    assertThat(result(working, inputs + usual).findNote(key)).isEmpty();
  }

  private static final String BORE =
      "thrust-top=3.8705in thrust-middle=3.8705in axial-top=3.8705in axial-middle=3.8705in"
          + " axial-bottom=3.8705in nominal=3.8700in thrust-bottom=";

  @Test
  void aReadingFarFromItsSistersIsAskedBack() {
    Result slip = result("bore-shape", BORE + "3.8905in");
    assertThat(slip.notes())
        .filteredOn(note -> note.kind() == Note.Kind.QUESTION)
        .singleElement()
        .satisfies(
            note -> assertThat(note.text()).contains("thrust bottom 3.8905 in is 0.0200 in from"));
    assertThat(result("bore-shape", BORE + "3.8780in").findNote("far-thrust-bottom")).isEmpty();
    String journal =
        "front-vertical=2.239in front-horizontal=2.239in rear-vertical=2.239in standard=2.24in"
            + " rear-horizontal=";
    assertThat(result("journal-shape", journal + "2.219in").findNote("far-rear-horizontal"))
        .isPresent();
    assertThat(result("journal-shape", journal + "2.237in").findNote("far-rear-horizontal"))
        .isEmpty();
  }

  @Test
  void aWornSizeOnTheWrongSideOfTheNewOneIsAskedBack() {
    assertThat(
            result("next-undersize", "standard=2.24in smallest=2.242in").findNote("over-standard"))
        .isPresent();
    assertThat(
            result("bore-shape", BORE.replace("3.8700in", "3.900in") + "3.8705in")
                .findNote("under-nominal"))
        .isPresent();
    assertThat(result("bore-shape", BORE + "3.8705in").findNote("under-nominal")).isEmpty();
  }

  @Test
  void aNegativeCutSaysThatNothingIsToBeCut() {
    assertThat(
            result("deck-cut", "SPACE chamber=63cc deck=0.025in target=8")
                .findNote("ratio-above-target"))
        .isPresent();
    assertThat(
            result("chamber-for-ratio", "SPACE chamber=63cc deck=0.025in target=8")
                .findNote("ratio-above-target"))
        .isPresent();
  }

  /** No row for a figure that nothing takes, and none that an everyday engine falls outside of. */
  @Test
  void usualFiguresBelongToInputsAndHoldEverydayEngines() {
    Set<String> keys =
        Workings.all().stream()
            .flatMap(working -> working.card().inputs().stream())
            .filter(AmountInput.class::isInstance)
            .map(input -> input.key())
            .collect(Collectors.toSet());
    PlanInputs.all().forEach(input -> keys.add(input.key()));
    assertThat(keys).containsAll(UsualFigures.keys());
    Random random = new Random(12);
    Set<String> drawnOdd = Set.of("unusual-target", "unusual-ratio", "unusual-opening");
    for (Sample sample : Samples.all()) {
      for (int run = 0; run < 50; run++) {
        Result result = (Result) sample.working().compute(sample.draw(random));
        assertThat(result.notes())
            .as(sample.key())
            .filteredOn(note -> note.key().startsWith("unusual-"))
            .allMatch(note -> drawnOdd.contains(note.key()));
      }
    }
  }
}
