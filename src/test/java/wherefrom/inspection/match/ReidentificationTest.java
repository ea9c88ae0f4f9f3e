package wherefrom.inspection.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.IntConsumer;
import org.junit.jupiter.api.Test;

class ReidentificationTest {
  /** SciPy's documentation of linear_sum_assignment gives this cost, columns 1 0 2, total 5. */
  @Test
  void theExampleOfAReferenceLibraryComesOutTheSame() {
    double[][] cost = {{4, 1, 3}, {2, 0, 5}, {3, 2, 2}};
    assertThat(Assignment.cheapest(cost)).containsExactly(1, 0, 2);
  }

  @Test
  void theAssignmentIsAsCheapAsTheBestOfAllPermutations() {
    Random random = new Random(20260101);
    for (int round = 0; round < 400; round++) {
      int rows = 1 + random.nextInt(7);
      int columns = rows + random.nextInt(2);
      double[][] cost = new double[rows][columns];
      for (double[] row : cost) {
        for (int at = 0; at < columns; at++) {
          row[at] = random.nextInt(4) == 0 ? random.nextInt(3) : 10 * random.nextDouble();
        }
      }
      int[] chosen = Assignment.cheapest(cost);
      assertThat(java.util.Arrays.stream(chosen).distinct().count()).isEqualTo(rows);
      double[] least = {Double.POSITIVE_INFINITY};
      permutations(rows, columns, way -> least[0] = Math.min(least[0], total(cost, way)));
      assertThat(total(cost, chosen)).isCloseTo(least[0], within(1e-9));
    }
  }

  @Test
  void theLikelihoodsAreThoseOfAllPermutationsWeighed() {
    Random random = new Random(20260102);
    for (int round = 0; round < 200; round++) {
      int rows = 1 + random.nextInt(6);
      int columns = rows + random.nextInt(2);
      double[][] weights = new double[rows][columns];
      for (double[] row : weights) {
        for (int at = 0; at < columns; at++) {
          row[at] = random.nextInt(5) == 0 ? 1e-9 : random.nextDouble();
        }
      }
      double[][] expected = new double[rows][columns];
      double[] sum = {0};
      permutations(
          rows,
          columns,
          way -> {
            double product = 1;
            for (int row = 0; row < rows; row++) {
              product *= weights[row][way[row]];
            }
            sum[0] += product;
            for (int row = 0; row < rows; row++) {
              expected[row][way[row]] += product;
            }
          });
      double[][] shares = Marginals.of(weights);
      for (int row = 0; row < rows; row++) {
        for (int column = 0; column < columns; column++) {
          assertThat(shares[row][column]).isCloseTo(expected[row][column] / sum[0], within(1e-9));
        }
      }
    }
  }

  @Test
  void partsThatAreAlikeCannotBeTold() {
    List<Fingerprint> recorded = new ArrayList<>();
    List<Fingerprint> found = new ArrayList<>();
    for (int at = 0; at < 4; at++) {
      recorded.add(Fingerprint.of("r" + at, 8.0, 0.0005));
      found.add(Fingerprint.of("f" + at, 8.0, 0.0005));
    }
    assertThat(Reidentification.of(found, recorded, false))
        .allSatisfy(
            match -> {
              assertThat(match.certainty()).isEqualTo(PartMatch.Certainty.CANNOT_TELL);
              assertThat(match.confidence()).isCloseTo(0.25, within(1e-9));
              assertThat(match.runnerUpConfidence()).isCloseTo(0.25, within(1e-9));
            });
  }

  @Test
  void aPartFarFromEveryRecordMatchesNone() {
    List<Fingerprint> recorded =
        List.of(Fingerprint.of("1", 8.000, 0.0005), Fingerprint.of("2", 8.020, 0.0005));
    List<Fingerprint> found =
        List.of(Fingerprint.of("a", 8.0201, 0.0005), Fingerprint.of("b", 7.9, 0.0005));
    List<PartMatch> matches = Reidentification.of(found, recorded, false);
    assertThat(matches.get(0).certainty()).isEqualTo(PartMatch.Certainty.CERTAIN);
    assertThat(matches.get(0).best()).isEqualTo("2");
    assertThat(matches.get(1).certainty()).isEqualTo(PartMatch.Certainty.MATCHES_NONE);
  }

  @Test
  void anInstrumentThatReadsAllOfThemHighIsLevelledOut() {
    Random random = new Random(20260103);
    List<Fingerprint> recorded = new ArrayList<>();
    List<Fingerprint> found = new ArrayList<>();
    for (int at = 0; at < 8; at++) {
      double length = 8 + 0.004 * at + 0.001 * random.nextDouble();
      recorded.add(Fingerprint.of("p" + at, length, 0.0003));
      found.add(Fingerprint.of("p" + at, length + 0.0042, 0.0003));
    }
    assertThat(Reidentification.of(found, recorded, true))
        .allMatch(match -> match.best().equals(match.found()))
        .allMatch(match -> match.certainty() == PartMatch.Certainty.CERTAIN);
  }

  @Test
  void groupsThatCannotBeMatchedAreRefusedInASentence() {
    Fingerprint one = Fingerprint.of("1", 8, 0.001);
    assertThat(Reidentification.findFault(List.of(one, one), List.of(one)))
        .contains("There are more untagged parts than records. Count again.");
    assertThat(Reidentification.findFault(List.of(), List.of(one))).isPresent();
  }

  /** 1,000 seeded shuffles: what is called certain is never wrong. */
  @Test
  void nothingCalledCertainIsWrongInAThousandShuffles() {
    Random random = new Random(20260104);
    int certain = 0;
    int wrong = 0;
    int all = 0;
    for (int round = 0; round < 1000; round++) {
      int size = 4 + random.nextInt(round % 10 == 0 ? 13 : 7);
      double spread = 0.001 + 0.02 * random.nextDouble();
      double u = 0.0002 + 0.0006 * random.nextDouble();
      boolean normal = random.nextBoolean();
      List<Fingerprint> recorded = new ArrayList<>();
      List<Fingerprint> found = new ArrayList<>();
      for (int at = 0; at < size; at++) {
        double length = 8 + spread * random.nextGaussian();
        double wall = 0.0943 + 0.1 * spread * random.nextGaussian();
        boolean two = round % 2 == 0;
        recorded.add(print("p" + at, two, length, wall, u, normal, random));
        found.add(print("p" + at, two, length, wall, u, normal, random));
      }
      Collections.shuffle(found, random);
      for (PartMatch match : Reidentification.of(found, recorded, false)) {
        all++;
        if (match.certainty() == PartMatch.Certainty.CERTAIN) {
          certain++;
          wrong += match.best().equals(match.found()) ? 0 : 1;
        }
      }
    }
    assertThat(wrong).isZero();
    // It must say something, too: a solver that never dares would pass the line above.
    assertThat(certain).isGreaterThan(all / 5);
  }

  private static Fingerprint print(
      String name, boolean two, double length, double wall, double u, boolean normal, Random r) {
    double one = length + error(u, normal, r);
    return two
        ? new Fingerprint(name, List.of(one, wall + error(u / 4, normal, r)), List.of(u, u / 4))
        : Fingerprint.of(name, one, u);
  }

  /** Of one standard uncertainty: normal, or each within limits equally likely. */
  private static double error(double u, boolean normal, Random random) {
    return normal ? u * random.nextGaussian() : u * Math.sqrt(3) * (2 * random.nextDouble() - 1);
  }

  private static double total(double[][] cost, int[] way) {
    double total = 0;
    for (int row = 0; row < way.length; row++) {
      total += cost[row][way[row]];
    }
    return total;
  }

  private interface Way {
    void take(int[] columns);
  }

  private static void permutations(int rows, int columns, Way way) {
    int[] chosen = new int[rows];
    boolean[] used = new boolean[columns];
    IntConsumer[] step = new IntConsumer[1];
    step[0] =
        row -> {
          if (row == rows) {
            way.take(chosen.clone());
            return;
          }
          for (int column = 0; column < columns; column++) {
            if (!used[column]) {
              used[column] = true;
              chosen[row] = column;
              step[0].accept(row + 1);
              used[column] = false;
            }
          }
        };
    step[0].accept(0);
  }
}
