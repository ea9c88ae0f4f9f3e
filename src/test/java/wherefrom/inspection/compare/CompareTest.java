package wherefrom.inspection.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CompareTest {
  private static List<String> names(int count) {
    return IntStream.rangeClosed(1, count).mapToObj(Integer::toString).toList();
  }

  /**
   * The eight values of NIST/SEMATECH e-Handbook 1.3.5.17, of which the last is the outlier (from
   * memory).
   */
  @Test
  void theOutlierOfTheHandbooksExampleIsFound() {
    double[] values = {199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57};
    OddOneOut odd = OddOneOut.of(names(8), values, 0);
    assertThat(odd.odd()).extracting(OddOneOut.Member::name).containsExactly("8");
    // Worked by hand: median 201.37, median distance 0.995, 0.6745 · 44.2 / 0.995.
    assertThat(odd.odd().get(0).score()).isCloseTo(29.963, within(0.001));
  }

  @Test
  void aDifferenceThatTheReadingsCannotCarryIsNotCalledOdd() {
    double[] values = {8.0000, 8.0001, 8.0000, 8.0001, 8.0000, 8.0009};
    assertThat(OddOneOut.of(names(6), values, 0.0005).odd()).isEmpty();
    assertThat(OddOneOut.of(names(6), values, 0.00005).odd()).hasSize(1);
  }

  @Test
  void ofFewerThanFiveNoneIsOdd() {
    OddOneOut few = OddOneOut.of(names(4), new double[] {1, 1, 1, 9}, 0);
    assertThat(few.odd()).isEmpty();
    assertThat(few.isTooFew()).isTrue();
  }

  @Test
  void allAlikeHaveNoOddOne() {
    assertThat(OddOneOut.of(names(6), new double[6], 0).odd()).isEmpty();
  }

  /** Studs on a leaning straightedge, one pulled 0.012 in (0.305 mm): found wherever it stands. */
  @Test
  void thePulledStudIsNamedWhereverItStandsAndHoweverTheRowLeans() {
    Random random = new Random(20260105);
    for (int round = 0; round < 200; round++) {
      int pulled = random.nextInt(8);
      double lean = random.nextGaussian() * 0.05;
      double[] positions = IntStream.range(0, 8).mapToDouble(at -> 40.0 * at).toArray();
      double[] heights = new double[8];
      for (int at = 0; at < 8; at++) {
        heights[at] = 50 + lean * positions[at] + 0.005 * random.nextGaussian();
      }
      heights[pulled] += 0.305;
      StraightLine line = StraightLine.of(names(8), positions, heights, 0.005);
      assertThat(line.proud())
          .extracting(StraightLine.Point::name)
          .containsExactly(Integer.toString(pulled + 1));
      StraightLine.Point point = line.proud().get(0);
      assertThat(point.proud()).isCloseTo(0.305, within(6 * point.u()));
      assertThat(point.stand()).isEqualTo(StraightLine.Stand.FAIL);
    }
  }

  @Test
  void aCoarseRuleLeavesItUndecided() {
    double[] positions = {0, 1, 2, 3, 4, 5};
    double[] heights = {50, 50, 50.15, 50, 50, 50};
    assertThat(StraightLine.of(names(6), positions, heights, 0.1).points().get(2).stand())
        .isEqualTo(StraightLine.Stand.UNDECIDED);
    assertThat(StraightLine.of(names(6), positions, heights, 0.005).points().get(2).stand())
        .isEqualTo(StraightLine.Stand.SUSPECT);
  }

  @Test
  void twoPulledStudsOfEightDoNotDragTheLineAlong() {
    double[] positions = {0, 1, 2, 3, 4, 5, 6, 7};
    double[] heights = {50, 50, 50, 50.3, 50.28, 50, 50, 50};
    assertThat(StraightLine.of(names(8), positions, heights, 0.005).proud())
        .extracting(StraightLine.Point::name)
        .containsExactly("4", "5");
  }

  /** A cam with more lift on one side: pooled, the lobe scores 3.44 and passes for sound. */
  @Test
  void aWornIntakeLobeIsOddAmongIntakesThoughTheExhaustsLiftMore() {
    List<String> sides = new ArrayList<>(Collections.nCopies(8, "exhaust"));
    sides.addAll(Collections.nCopies(8, "intake"));
    double[] lifts = new double[16];
    Arrays.fill(lifts, 0, 8, 0.3035);
    Arrays.fill(lifts, 8, 15, 0.2935);
    lifts[15] = 0.2730;

    assertThat(OddOneOut.of(names(16), lifts, 0.0002).odd()).isEmpty();
    OddOneOut bySide = OddOneOut.of(names(16), sides, lifts, 0.0002);
    assertThat(bySide.odd()).extracting(OddOneOut.Member::name).containsExactly("16");
    assertThat(bySide.odd().get(0).distance()).isCloseTo(-0.0205, within(1e-9));
    assertThat(bySide.middles())
        .extracting(OddOneOut.Middle::median)
        .containsExactly(0.3035, 0.2935);
  }

  @Test
  void ofASideOfTwoNothingIsSaid() {
    List<String> sides = List.of("intake", "intake", "exhaust", "exhaust");
    OddOneOut few = OddOneOut.of(names(4), sides, new double[] {1, 1, 1, 9}, 0);
    assertThat(few.odd()).isEmpty();
    assertThat(few.isTooFew()).isTrue();
  }
}
