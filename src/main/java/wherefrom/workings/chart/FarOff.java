package wherefrom.workings.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds out whether a few values lie so far from the others that they would flatten them. */
final class FarOff {
  /** From this part of the whole on a stretch without values is left out. */
  private static final double WIDE = 0.5;

  /** The most that may lie far off, as a part of all. */
  private static final double MOST = 0.25;

  private FarOff() {}

  /** A value with its band. */
  record Span(double low, double high) {}

  /** The stretch to leave out; empty where the values lie well together. */
  static Optional<Axis.Gap> find(List<Span> spans) {
    List<Span> sorted = new ArrayList<>(spans);
    sorted.sort(Comparator.comparingDouble(Span::low));
    double reached = sorted.isEmpty() ? 0 : sorted.get(0).high();
    double from = 0;
    double to = 0;
    int below = 0;
    for (int at = 1; at < sorted.size(); at++) {
      double low = sorted.get(at).low();
      if (low - reached > to - from) {
        from = reached;
        to = low;
        below = at;
      }
      reached = Math.max(reached, sorted.get(at).high());
    }
    double whole = sorted.isEmpty() ? 0 : reached - sorted.get(0).low();
    int few = Math.min(below, sorted.size() - below);
    return to - from > WIDE * whole && few <= MOST * sorted.size()
        ? Optional.of(new Axis.Gap(from, to, below <= sorted.size() / 2))
        : Optional.empty();
  }
}
