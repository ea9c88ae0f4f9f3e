package wherefrom.workings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Looks over the whole range of an unknown for places where the result passes the wanted one. Where
 * the working begins or ceases to make sense between two looks, the border is found by halving, so
 * that an answer close to it is not missed.
 */
record Survey(List<Bracket> brackets, List<Double> seen) {
  private static final int LOOKS = 128;
  private static final int HALVINGS = 120;

  /** Two values of the unknown with the wanted result between them. */
  record Bracket(double from, double to) {}

  /** The smallest and largest result seen. */
  record Span(double least, double most) {}

  Survey {
    brackets = List.copyOf(brackets);
    seen = List.copyOf(seen);
  }

  static Survey of(Probe probe, Range range) {
    List<Double> looks = looks(probe, range);
    List<Bracket> brackets = new ArrayList<>();
    List<Double> seen = new ArrayList<>();
    for (int i = 0; i < looks.size(); i++) {
      double here = probe.offset(looks.get(i));
      seen.add(here);
      double before = i == 0 ? Double.NaN : seen.get(i - 1);
      if (here == 0 || before * here < 0) {
        brackets.add(new Bracket(here == 0 ? looks.get(i) : looks.get(i - 1), looks.get(i)));
      }
    }
    return new Survey(
        brackets,
        seen.stream().filter(Double::isFinite).map(offset -> offset + probe.wanted()).toList());
  }

  private static List<Double> looks(Probe probe, Range range) {
    double least = range.least().doubleValue();
    double most = range.most().doubleValue();
    double first = range.leastItself() ? least : Math.nextUp(least) + (most - least) * 1e-12;
    List<Double> looks = new ArrayList<>(List.of(first));
    for (int i = 1; i <= LOOKS; i++) {
      double before = looks.get(looks.size() - 1);
      double here = first + (most - first) * i / LOOKS;
      if (makesSense(probe, before) != makesSense(probe, here)) {
        looks.addAll(border(probe, before, here));
      }
      looks.add(here);
    }
    return looks;
  }

  private static boolean makesSense(Probe probe, double x) {
    return Double.isFinite(probe.offset(x));
  }

  /** The last two values either side of the border. */
  private static List<Double> border(Probe probe, double from, double to) {
    boolean sense = makesSense(probe, from);
    double low = from;
    double high = to;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = low + (high - low) / 2;
      if (makesSense(probe, middle) == sense) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return List.of(low, high);
  }

  /** Whether the result is the same wherever there is one. */
  boolean isFlat() {
    return seen.stream().distinct().count() == 1;
  }

  Optional<Span> findSpan() {
    if (seen.isEmpty()) {
      return Optional.empty();
    }
    double least = seen.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    double most = seen.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    return Optional.of(new Span(least, most));
  }
}
