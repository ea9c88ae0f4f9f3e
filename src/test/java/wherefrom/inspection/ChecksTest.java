package wherefrom.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
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
  void keysAreUnique() {
    assertThat(Checks.all().stream().map(Check::key)).doesNotHaveDuplicates();
  }

  @Test
  void printedFiguresSayThatTheyBelongToAnotherEngine() {
    Stream<Printed> printed = Checks.all().stream().flatMap(check -> check.printed().stream());
    assertThat(printed)
        .isNotEmpty()
        .allMatch(figure -> figure.text().endsWith("another engine's figure)"));
  }

  /** Test, words, source. */
  private static final List<String> FOUND_IN_PRINT =
      List.of(
          "pushrod-roll|limit 0.002 in|TM 10-3930-653-14&P",
          "pushrod-roll|0.008 in at most|TM 9-2815-253-24",
          "pushrod-roll|0.035 in on a large diesel|TM 9-2815-225-34&P",
          "pushrod-ends|at least 80 % blue contact|TM 9-2815-225-34&P",
          "rocker-faces|cups or concave wear: replace|TM 9-2815-259-24, 4-72",
          "lifter-foot|the foot must be convex|Service Manual, 1998, general engine overhaul",
          "lifter-sink|fit 0.0006 to 0.0020 in, limit 0.0039 in|TM 10-3930-653-14&P",
          "lobe-look|lift 0.2935 in, wear limit 0.020 in|TM 5-4210-229-14&P",
          "chain-slack|total deflection at most 0.810 in|TM 9-2815-237-34",
          "valve-stem|new 0.0011-0.0012 in, limit 0.0039 in|TM 10-3930-653-14&P",
          "valve-stem|exhaust: new 0.0023-0.0024 in, limit 0.0059 in|TM 10-3930-653-14&P",
          "valve-stem|stem worn 0.002 in past its limit: replace|TM 10-3930-671-24",
          "valve-margin|at least 0.031 in|TM 5-1940-322-24",
          "valve-margin|at least half of new|TM 10-3930-671-24",
          "seat-look|valve face true to its stem within 0.002 in|TM 10-3930-671-24",
          "spring-square|lean at most 0.059 in|TM 10-3930-653-14&P",
          "spring-square|lean at most 0.039-0.040 in|TM 5-1940-322-24",
          "spring-square|lean at most 0.039-0.040 in|TM 9-2815-254-24",
          "spring-height|free length at most 3 % short|NAVEDTRA 14076",
          "spring-height|load lost more than 10 %: replace|TM 9-2815-247-34, WP 0072",
          "bore-look|taper and out-of-round 0.0015 in (bore of a liner engine)|TM 5-4320-300-14",
          "bore-look|0.002 in (another block for liners)|TM 55-1905-219-14-10, 5-368",
          "bore-look|about 0.003 in out-of-round, 0.005-0.008 in taper to re-ring|from memory",
          "piston-skirt|skirt to bore 0.0010-0.0018 in new|TM 10-3930-653-14&P",
          "ring-look|top 0.0098-0.0157 in, limit 0.039 in|TM 10-3930-653-14&P",
          "ring-look|at least 0.0035 in per inch of bore; over 0.008 a worn bore|Hastings Service Tips",
          "head-flat|0.003 in across, 0.005 in along|TM 9-4940-549-14&P, 12-14",
          "head-flat|0.004 in|TM 10-3930-653-14&P",
          "block-pressure|40 psi on the jacket, in water of 180 to 200 °F|TM 5-3895-359-14&P",
          "head-flat|0.006 in along, 0.004 in across|TM 5-3820-256-24-5",
          "deck-flat|0.003 in, 0.006 in in all|TM 5-4320-300-14",
          "rod-journal-look|out-of-round and taper 0.0005 in|TM 5-3805-262-34",
          "rod-journal-look|taper 0.0005 in, out-of-round 0.002 in|TM 9-6115-604-34",
          "main-journal-look|wear limit 0.0012 in|TM 10-3930-653-14&P",
          "crank-look|bend is half of the reading|TM 10-3930-653-14&P");

  /** Each figure that was found in print, under the test that it belongs to, and its source. */
  @Test
  void figuresStandAsTheyArePrintedAndNoneStandsWithoutARowHere() {
    Set<String> seen = new HashSet<>();
    for (String row : FOUND_IN_PRINT) {
      String[] cells = row.split("\\|");
      seen.add(cells[0] + " " + cells[1]);
      assertThat(Checks.find(cells[0]).orElseThrow().printed())
          .as(row)
          .anyMatch(one -> one.words().equals(cells[1]) && one.source().contains(cells[2]));
    }
    for (Check check : Checks.all()) {
      assertThat(check.printed())
          .as(check.key())
          .allMatch(one -> seen.contains(check.key() + " " + one.words()));
    }
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
