package wherefrom.scan.grease;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What one reader made of the frames. */
final class GreaseTally {
  private final Map<Family, int[]> read = new EnumMap<>(Family.class);
  private final Map<Family, int[]> shown = new EnumMap<>(Family.class);
  private final List<Double> milliseconds = new ArrayList<>();
  private int wrong;

  /**
   * @param milliseconds of processor time, for 720 lines; negative where not measured
   */
  void add(Family family, int grade, String text, List<String> texts, double milliseconds) {
    shown.computeIfAbsent(family, made -> new int[Family.GRADES + 1])[grade]++;
    if (texts.contains(text)) {
      read.computeIfAbsent(family, made -> new int[Family.GRADES + 1])[grade]++;
    }
    wrong += (int) texts.stream().filter(one -> !one.equals(text)).count();
    if (milliseconds >= 0) {
      this.milliseconds.add(milliseconds);
    }
  }

  int wrong() {
    return wrong;
  }

  double percent(Collection<Family> families) {
    int all = 0;
    int right = 0;
    for (Family family : families) {
      all += sum(shown.getOrDefault(family, new int[1]));
      right += sum(read.getOrDefault(family, new int[1]));
    }
    return 100.0 * right / Math.max(1, all);
  }

  double percent(Family family) {
    int right = sum(read.getOrDefault(family, new int[1]));
    return 100.0 * right / Math.max(1, sum(shown.getOrDefault(family, new int[1])));
  }

  double percent(Family family, int grade) {
    int[] none = new int[Family.GRADES + 1];
    return 100.0
        * read.getOrDefault(family, none)[grade]
        / Math.max(1, shown.getOrDefault(family, none)[grade]);
  }

  private static int sum(int[] counts) {
    int sum = 0;
    for (int count : counts) {
      sum += count;
    }
    return sum;
  }

  double quantile(double share) {
    if (milliseconds.isEmpty()) {
      return Double.NaN;
    }
    List<Double> sorted = new ArrayList<>(milliseconds);
    Collections.sort(sorted);
    return sorted.get((int) Math.min(sorted.size() - 1L, (long) (share * sorted.size())));
  }

  /** A row of the table: name, rate, wrong, times, then the families. */
  String row(String name) {
    StringBuilder row = new StringBuilder();
    row.append(
        String.format(
            Locale.ROOT,
            "| %s | %.1f | %.1f | %d | %.0f / %.0f |",
            name,
            percent(Family.FIRST),
            percent(Family.LATER),
            wrong,
            quantile(0.5),
            quantile(0.95)));
    for (Family family : Family.values()) {
      row.append(String.format(Locale.ROOT, " %.0f |", percent(family)));
    }
    return row.toString();
  }
}
