package wherefrom.job.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Subject;
import wherefrom.inspection.match.PartMatch;
import wherefrom.job.BenchJob;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.quantity.Dimension;

/**
 * A thousand groups of washed pushrods without tags, told by {@link Retagging} from readings as a
 * person types them: each tool is off by an amount of its own, each reading repeats as it pleases,
 * and both are typed to the tool's last step. Every answer is set beside all ways to match the
 * group.
 */
class RetaggingShufflesTest {
  private static final int SHUFFLES = 1_000;
  private static final int GROUPS_A_JOB = 25;
  private static final String PLAN = "pushrod-length";
  private static final String[] PLACES = {"1IN", "1EX", "2IN", "2EX", "3IN", "3EX"};

  /** A tool's card in inches, and how far off this one is. */
  private record Gauge(String name, double step, double error, double repeat, double off) {
    String read(double truth, Random random) {
      double shown = truth + off + repeat * (2 * random.nextDouble() - 1);
      long steps = Math.round(shown / step);
      return BigDecimal.valueOf(steps)
          .multiply(BigDecimal.valueOf(step))
          .setScale(4, RoundingMode.HALF_UP)
          .toPlainString();
    }

    /** JCGM 100:2008, 4.3.7 and 5.1: half a step, error, repeat, steel within 2 °C; all even. */
    double uncertainty(double size) {
      double warm = size * 11.5e-6 * 2;
      double sum = step * step / 4 + error * error + repeat * repeat + warm * warm;
      return Math.sqrt(sum / 3);
    }
  }

  /** What one shuffle was made of, and what came back. */
  private record Group(
      List<Integer> items,
      Map<String, Integer> truth,
      Map<Integer, String> before,
      Map<String, String> now,
      Gauge first,
      Gauge second,
      List<PartMatch> matches) {}

  private int all;
  private int certain;
  private int wrong;
  private int twins;

  private static Gauge gauge(String name, double step, double error, Random random) {
    return new Gauge(name, step, error, step, error * (2 * random.nextDouble() - 1));
  }

  private Group shuffle(BenchJob bench, Random random, int round) {
    boolean fine = random.nextBoolean();
    Gauge first = gauge("first" + round, 0.0005, fine ? 0.0005 : 0.001, random);
    Gauge second = random.nextBoolean() ? first : gauge("second" + round, 0.0005, 0.001, random);
    for (Gauge one : List.of(first, second)) {
      new Instruments(bench.job)
          .list(
              one.name(),
              Dimension.LENGTH,
              BigDecimal.valueOf(one.step()).toPlainString(),
              BigDecimal.valueOf(one.error()).toPlainString(),
              BigDecimal.valueOf(one.repeat()).toPlainString());
    }
    int size = 3 + random.nextInt(PLACES.length - 2);
    double spread = 0.002 + 0.03 * random.nextDouble();
    List<Integer> items = new ArrayList<>();
    Map<Integer, Double> lengths = new LinkedHashMap<>();
    Map<Integer, String> before = new LinkedHashMap<>();
    for (int at = 0; at < size; at++) {
      int item = bench.item("pushrod@" + PLACES[at]);
      double length = 8 + spread * random.nextGaussian();
      String typed = first.read(length, random);
      items.add(item);
      lengths.put(item, length);
      before.put(item, typed);
      measure(bench, item, first.name(), typed);
    }
    if (round % 4 == 0) {
      // Two that were recorded alike: no reading can tell them apart.
      String typed = before.get(items.get(0));
      before.put(items.get(1), typed);
      lengths.put(items.get(1), lengths.get(items.get(0)));
      measure(bench, items.get(1), first.name(), typed);
    }
    List<Integer> order = new ArrayList<>(items);
    Collections.shuffle(order, random);
    Map<String, Integer> truth = new LinkedHashMap<>();
    Map<String, String> now = new LinkedHashMap<>();
    for (int at = 0; at < size; at++) {
      String mark = "chalk " + at;
      truth.put(mark, order.get(at));
      now.put(mark, second.read(lengths.get(order.get(at)), random));
    }
    int logged = bench.job.history().size();
    Retagging.Answer answer = new Retagging(bench.job).propose(items, PLAN, second.name(), now);
    assertThat(bench.job.history()).as("a proposal records nothing").hasSize(logged);
    assertThat(answer).isInstanceOf(Retagging.Answer.Proposed.class);
    return new Group(
        items, truth, before, now, first, second, ((Retagging.Answer.Proposed) answer).matches());
  }

  private static void measure(BenchJob bench, int item, String tool, String typed) {
    Measuring.Answer answer =
        new Measuring(bench.job)
            .take(
                new Measuring.Entry(
                    Subject.ofPart(item), PLAN, tool, Map.of("length", List.of(typed)), true, ""));
    assertThat(answer).isInstanceOf(Measuring.Answer.Kept.class);
  }

  /** Squared distances in standard uncertainties; of another tool the common offset is out. */
  private static double[][] distances(Group group) {
    List<String> marks = List.copyOf(group.now().keySet());
    int size = marks.size();
    double offset = 0;
    if (group.first() != group.second()) {
      double later = group.now().values().stream().mapToDouble(Double::parseDouble).sum();
      double earlier = group.before().values().stream().mapToDouble(Double::parseDouble).sum();
      offset = (later - earlier) / size;
    }
    double[][] distances = new double[size][size];
    for (int row = 0; row < size; row++) {
      double now = Double.parseDouble(group.now().get(marks.get(row)));
      for (int column = 0; column < size; column++) {
        double then = Double.parseDouble(group.before().get(group.items().get(column)));
        double u1 = group.second().uncertainty(now);
        double u2 = group.first().uncertainty(then);
        double away = now - offset - then;
        distances[row][column] = away * away / (u1 * u1 + u2 * u2);
      }
    }
    return distances;
  }

  /** All orders of the numbers below a size. */
  private static List<int[]> orders(int size) {
    if (size == 0) {
      return List.of(new int[0]);
    }
    List<int[]> orders = new ArrayList<>();
    for (int[] shorter : orders(size - 1)) {
      for (int at = 0; at < size; at++) {
        int[] order = new int[size];
        System.arraycopy(shorter, 0, order, 0, at);
        order[at] = size - 1;
        System.arraycopy(shorter, at, order, at + 1, size - 1 - at);
        orders.add(order);
      }
    }
    return orders;
  }

  private static void setBesideAllWays(Group group) {
    double[][] distances = distances(group);
    int size = distances.length;
    double least = Double.POSITIVE_INFINITY;
    for (int[] order : orders(size)) {
      least = Math.min(least, sum(distances, order));
    }
    double likelihood = 0;
    double[][] shares = new double[size][size];
    for (int[] order : orders(size)) {
      double one = Math.exp((least - sum(distances, order)) / 2);
      likelihood += one;
      for (int row = 0; row < size; row++) {
        shares[row][order[row]] += one;
      }
    }
    int[] chosen = new int[size];
    for (int row = 0; row < size; row++) {
      PartMatch match = group.matches().get(row);
      chosen[row] = group.items().indexOf(Integer.parseInt(match.best()));
      assertThat(match.confidence()).isCloseTo(shares[row][chosen[row]] / likelihood, within(1e-5));
    }
    assertThat(sum(distances, chosen)).isCloseTo(least, within(1e-6 * (1 + least)));
  }

  private static double sum(double[][] distances, int[] order) {
    double sum = 0;
    for (int row = 0; row < order.length; row++) {
      sum += distances[row][order[row]];
    }
    return sum;
  }

  private void count(Group group) {
    for (PartMatch match : group.matches()) {
      int item = Integer.parseInt(match.best());
      all++;
      if (match.certainty() == PartMatch.Certainty.CERTAIN) {
        certain++;
        wrong += group.truth().get(match.found()) == item ? 0 : 1;
      }
      boolean twin =
          group.before().entrySet().stream()
              .anyMatch(
                  one -> one.getKey() != item && one.getValue().equals(group.before().get(item)));
      if (twin) {
        twins++;
        assertThat(match.certainty())
            .isIn(PartMatch.Certainty.CANNOT_TELL, PartMatch.Certainty.MATCHES_NONE);
      }
    }
  }

  @Test
  void whatIsCalledCertainIsRightInAThousandShuffles() {
    Random random = new Random(20260301);
    BenchJob bench = BenchJob.v8();
    for (int round = 0; round < SHUFFLES; round++) {
      bench = round % GROUPS_A_JOB == 0 ? BenchJob.v8() : bench;
      Group group = shuffle(bench, random, round);
      setBesideAllWays(group);
      count(group);
    }
    assertThat(wrong).isZero();
    assertThat(twins).isGreaterThan(200);
    // One that never dares would pass all of the above.
    assertThat((double) certain / all).isGreaterThan(0.2);
  }
}
