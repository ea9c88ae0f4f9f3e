package wherefrom.workings.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** The rows of names below a plot, filled by turns; a name that is taken first keeps its room. */
final class NamesAcross {
  /** Between names of a row, and beside a line that leads to a name, in heights of a capital. */
  private static final double BETWEEN = 0.5;

  private static final double BESIDE = 0.2;

  private record Span(double from, double to) {}

  private final double letter;
  private final List<List<Span>> rows = new ArrayList<>();
  private final List<Double> lower = new ArrayList<>();

  NamesAcross(int rows, double letter) {
    this.letter = letter;
    for (int row = 0; row < rows; row++) {
      this.rows.add(new ArrayList<>());
    }
  }

  /**
   * The row in which a name has room; empty where it would touch one that is there.
   *
   * @param turn the how manyth name from the left it is, from 0
   * @param x what it names
   */
  OptionalInt take(int turn, double x, double from, double to) {
    int at = turn % rows.size();
    double air = BETWEEN * letter;
    if (rows.get(at).stream()
        .anyMatch(span -> from <= span.to() + air && span.from() <= to + air)) {
      return OptionalInt.empty();
    }
    rows.get(at).add(new Span(from, to));
    if (at > 0) {
      lower.add(x);
    }
    return OptionalInt.of(at);
  }

  /** Where lines lead past the first row to a name of the second: through no name. */
  List<Double> leads() {
    double air = BESIDE * letter;
    return lower.stream()
        .filter(x -> rows.get(0).stream().noneMatch(at -> at.from() - air < x && x < at.to() + air))
        .toList();
  }
}
