package wherefrom.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * How evenly a V engine fires, from its angle, its pins and its order alone. A piston of the second
 * bank is at the top later by the angle between the banks, less what its pin is split by.
 */
class FiringIntervalsTest {
  private static final int TWO_TURNS = 720;
  private static final List<Integer> V8_PINS = List.of(0, 270, 90, 180);

  private static Layout ready(String name) {
    return ReadyLayouts.find(name).orElseThrow();
  }

  /** Degrees of the crank at the top dead centers of a cylinder, 0 to 359. */
  private static int top(Layout layout, int cylinder, List<Integer> pins, int vee, int split) {
    Bank bank = layout.findBank(cylinder).orElseThrow();
    boolean later = !bank.equals(layout.banks().get(0));
    int pin = pins.get(bank.cylinders().indexOf(cylinder));
    return Math.floorMod(pin + (later ? vee - split : 0), TWO_TURNS / 2);
  }

  /** The degrees from each firing to the next, 720 in all; empty where two turns do not do. */
  private static List<Integer> intervals(Layout layout, List<Integer> pins, int vee, int split) {
    List<Integer> order = layout.firingOrder();
    List<Integer> between = new ArrayList<>();
    for (int at = 0; at < order.size(); at++) {
      int from = top(layout, order.get(at), pins, vee, split);
      int to = top(layout, order.get((at + 1) % order.size()), pins, vee, split);
      between.add(Math.floorMod(to - from, TWO_TURNS / 2));
    }
    int sum = between.stream().mapToInt(each -> each).sum();
    return sum == TWO_TURNS ? between : List.of();
  }

  private static List<List<Integer>> threePins() {
    return IntStream.range(0, 9)
        .mapToObj(one -> List.of(0, one % 3 * 120, one / 3 * 120))
        .filter(pins -> new TreeSet<>(pins).size() == 3)
        .toList();
  }

  private static boolean firesEvenly(int vee, int split) {
    return threePins().stream()
        .anyMatch(
            pins ->
                new TreeSet<>(intervals(ready("v6-odd-even"), pins, vee, split))
                    .equals(new TreeSet<>(List.of(120))));
  }

  @Test
  void theReadySixFiresEvenlyWithSplitPinsAndUnevenlyWithPlainOnes() {
    Layout six = ready("v6-odd-even");
    assertThat(six.vee()).isEqualTo(90);
    assertThat(firesEvenly(six.vee(), -30) || firesEvenly(-six.vee(), 30)).isTrue();
    assertThat(firesEvenly(six.vee(), 0) || firesEvenly(-six.vee(), 0)).isFalse();
    assertThat(
            threePins().stream()
                .flatMap(pins -> intervals(six, pins, -six.vee(), 0).stream())
                .distinct())
        .contains(90, 150);
  }

  @Test
  void atSixtyDegreesOnThreePlainPinsNoSixFiresEvenly() {
    assertThat(firesEvenly(60, 0) || firesEvenly(-60, 0)).isFalse();
  }

  @Test
  void theReadyEightsFireEveryQuarterTurn() {
    Layout eight = ready("v8-odd-even");
    assertThat(intervals(eight, V8_PINS, -eight.vee(), 0)).containsOnly(90);
  }
}
