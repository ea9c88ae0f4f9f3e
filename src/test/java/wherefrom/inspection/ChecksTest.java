package wherefrom.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.parts.PartKind;

class ChecksTest {
  @Test
  void everyKindOfPartAndEveryFeatureHasAQuickTest() {
    Arrays.stream(PartKind.values())
        .forEach(kind -> assertThat(Checks.of(kind)).as(kind.word()).isNotEmpty());
    Arrays.stream(Feature.values())
        .forEach(feature -> assertThat(Checks.of(feature)).as(feature.word()).isNotEmpty());
  }

  @Test
  void everyTestTellsHowWhereAndAllThreeAnswersAndItsSource() {
    for (Check check : Checks.all()) {
      assertThat(
              List.of(
                  check.title(),
                  check.how(),
                  check.where(),
                  check.pass(),
                  check.suspect(),
                  check.fail(),
                  check.source()))
          .as(check.key())
          .allMatch(words -> !words.isBlank());
    }
  }

  @Test
  void keysAreUniqueAndDrawingsAreNamedAfterThem() {
    assertThat(Checks.all().stream().map(Check::key)).doesNotHaveDuplicates();
    assertThat(Checks.find("pushrod-roll").orElseThrow().drawing())
        .isEqualTo("pushrod/pushrod-roll");
  }

  @Test
  void printedFiguresSayThatTheyBelongToAnotherEngine() {
    Stream<Printed> printed = Checks.all().stream().flatMap(check -> check.printed().stream());
    assertThat(printed)
        .isNotEmpty()
        .allMatch(figure -> figure.text().endsWith("another engine's figure)"));
  }

  @Test
  void figuresStandAsTheyArePrinted() {
    // TM 10-3930-653-14&P, TM 9-2815-253-24, TM 9-2815-225-34&P: pushrod runout.
    assertThat(Checks.find("pushrod-roll").orElseThrow().printed())
        .extracting(Printed::words)
        .containsExactly("limit 0.002 in", "0.008 in at most", "0.035 in on a large diesel");
    // TM 5-4210-229-14&P, 6-19: 0.2935 in less 0.020 in leaves 0.2735 in.
    assertThat(Checks.find("lobe-look").orElseThrow().printed().get(0).words())
        .isEqualTo("lift 0.2935 in, wear limit 0.020 in");
    // TM 9-2815-237-34, 2-28: total chain deflection.
    assertThat(Checks.find("chain-slack").orElseThrow().printed().get(0).words())
        .contains("0.810 in");
  }

  @Test
  void subjectsAreReadBackFromTheirKeys() {
    for (Layout layout : ReadyLayouts.all()) {
      for (Feature feature : Feature.values()) {
        for (String where : feature.where(layout)) {
          Subject subject = new Subject.AFeature(feature, where);
          assertThat(Subject.find(subject.key())).contains(subject);
        }
      }
    }
    assertThat(Subject.find("#12")).contains(Subject.ofPart(12));
    assertThat(Subject.find("nothing")).isEmpty();
    assertThat(new Subject.AFeature(Feature.LOBE, "3EX").words())
        .isEqualTo("cylinder 3, exhaust, cam lobe");
  }
}
