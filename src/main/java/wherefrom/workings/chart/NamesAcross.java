package wherefrom.workings.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

/** The rows of names below a plot, filled by turns from the left. */
final class NamesAcross {
  /** Between names of a row, and beside a line that leads to a name, in heights of a capital. */
  private static final double BETWEEN = 0.5;

  private static final double BESIDE = 0.2;

  private record Span(double from, double to) {}

  private final double letter;
  private final double[] last;
  private final List<Span> upper = new ArrayList<>();
  private final List<Double> lower = new ArrayList<>();
  private int row;

  NamesAcross(int rows, double letter) {
    this.letter = letter;
    last = new double[rows];
    Arrays.fill(last, Double.NEGATIVE_INFINITY);
  }

  /**
   * The row in which the next name has room; empty where it would touch the one before.
   *
   * @param x what it names
   */
  OptionalInt take(double x, double from, double to) {
    int at = row;
    row = (row + 1) % last.length;
    if (from <= last[at] + BETWEEN * letter) {
      return OptionalInt.empty();
    }
    last[at] = to;
    if (at == 0) {
      upper.add(new Span(from, to));
    } else {
      lower.add(x);
    }
    return OptionalInt.of(at);
  }

  /** Where lines lead past the first row to a name of the second: through no name. */
  List<Double> leads() {
    double air = BESIDE * letter;
    return lower.stream()
        .filter(x -> upper.stream().noneMatch(at -> at.from() - air < x && x < at.to() + air))
        .toList();
  }
}
