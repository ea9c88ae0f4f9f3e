package wherefrom.scan.grease;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

/** Processor time of several readers on the same frames, which all see in the same order. */
final class GreasePace {
  private record Shown(double milliseconds, boolean read) {}

  private final Map<String, List<Shown>> shown = new LinkedHashMap<>();

  /**
   * @param milliseconds of processor time for one frame
   * @param read whether it gave the frame's tag
   */
  void add(String reader, double milliseconds, boolean read) {
    shown.computeIfAbsent(reader, made -> new ArrayList<>()).add(new Shown(milliseconds, read));
  }

  /** Of each reader all frames, those that it read and those that it did not. */
  String ownTable() {
    StringBuilder table =
        new StringBuilder("| reader | ms, middle | read | ms, mean | not read | ms, mean |\n");
    table.append("|---|--:|--:|--:|--:|--:|\n");
    shown.forEach(
        (name, frames) -> {
          List<Double> read = milliseconds(frames.stream().filter(Shown::read).toList());
          List<Double> lost = milliseconds(frames.stream().filter(one -> !one.read()).toList());
          table.append(
              String.format(
                  Locale.ROOT,
                  "| %s | %.2f | %d | %.2f | %d | %.2f |%n",
                  name,
                  middle(milliseconds(frames)),
                  read.size(),
                  mean(read),
                  lost.size(),
                  mean(lost)));
        });
    return table.toString();
  }

  /**
   * One reader beside each other on the frames that both of the two read, so that neither is
   * charged for what only it reads.
   */
  String bothTable(String ours) {
    StringBuilder table =
        new StringBuilder("| read by both | frames | ms here | ms there | ratio of the means |");
    table.append(" mean of the ratios | ratio in the middle |\n");
    table.append("|---|--:|--:|--:|--:|--:|--:|\n");
    shown.keySet().stream()
        .filter(other -> !other.equals(ours))
        .forEach(other -> table.append(bothRow(ours, other)));
    return table.toString();
  }

  private String bothRow(String ours, String other) {
    List<Shown> here = shown.get(ours);
    List<Shown> there = shown.get(other);
    int[] both =
        IntStream.range(0, here.size())
            .filter(at -> here.get(at).read() && there.get(at).read())
            .toArray();
    List<Double> own = IntStream.of(both).mapToObj(at -> here.get(at).milliseconds()).toList();
    List<Double> its = IntStream.of(both).mapToObj(at -> there.get(at).milliseconds()).toList();
    List<Double> ratios =
        IntStream.range(0, both.length).mapToObj(at -> own.get(at) / its.get(at)).toList();
    return String.format(
        Locale.ROOT,
        "| %s | %d | %.2f | %.2f | %.2f | %.2f | %.2f |%n",
        other,
        both.length,
        mean(own),
        mean(its),
        mean(own) / mean(its),
        mean(ratios),
        middle(ratios));
  }

  private static List<Double> milliseconds(List<Shown> frames) {
    return frames.stream().map(Shown::milliseconds).toList();
  }

  /** Not a number of none. */
  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(value -> value).average().orElse(Double.NaN);
  }

  private static double middle(List<Double> values) {
    List<Double> sorted = new ArrayList<>(values);
    Collections.sort(sorted);
    return sorted.isEmpty() ? Double.NaN : sorted.get(sorted.size() / 2);
  }
}
