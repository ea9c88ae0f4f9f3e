package wherefrom.inspection.compare;

import java.util.Arrays;

/** Medians, which one bad reading cannot carry away. */
final class Medians {
  private Medians() {}

  static double of(double... values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int half = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
  }

  /** The median distance from a centre. */
  static double deviation(double[] values, double centre) {
    return of(Arrays.stream(values).map(value -> Math.abs(value - centre)).toArray());
  }
}
