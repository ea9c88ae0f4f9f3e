package wherefrom.scan.grease;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import wherefrom.scan.match.AcceptanceBound;

/**
 * The upper tail of chance scores, the largest for each frame and list. A chance score reaches z
 * with probability at most exp(-z²/2) (Hoeffding 1963), so it is z²/2 whose excess over a high
 * quantile is taken for exponential, with its mean at the upper end of the confidence interval:
 * where scores lie less close to chance than that, the mean is larger and the extrapolation says
 * so.
 */
final class ScoreTail {
  private static final double SHARE = 0.02;

  /** One-sided 99 % of the normal distribution. */
  private static final double SURE = 2.33;

  private static final double WANTED = energy(0);

  private final String kind;
  private final List<Double> margins = new ArrayList<>();
  private int shown;

  ScoreTail(String kind) {
    this.kind = kind;
  }

  /** The largest margin on a frame with one list; minus infinity where nothing can be accepted. */
  void add(double margin) {
    shown++;
    if (margin > Double.NEGATIVE_INFINITY) {
      margins.add(margin);
    }
  }

  double largest() {
    return margins.isEmpty() ? Double.NEGATIVE_INFINITY : Collections.max(margins);
  }

  /** Acceptances to be expected for each frame, extrapolated to margin 0, at 99 % confidence. */
  double acceptances() {
    List<Double> sorted = new ArrayList<>(margins);
    sorted.sort(Collections.reverseOrder());
    int count = (int) Math.min(sorted.size() - 1L, Math.round(SHARE * shown));
    if (count < 1) {
      return 0;
    }
    double from = energy(sorted.get(count));
    double excess = 0;
    for (double margin : sorted.subList(0, count)) {
      excess += (energy(margin) - from) / count;
    }
    return (double) count / shown * Math.exp((from - WANTED) / upper(excess, count));
  }

  /** z²/2 of the evidence that lies by a margin over what is wanted. */
  private static double energy(double margin) {
    double evidence = Math.max(0, margin + AcceptanceBound.EVIDENCE_IN_PATTERN);
    return evidence * evidence / 2;
  }

  /** The sum of n exponentials is gamma distributed; by Wilson and Hilferty (1931). */
  private static double upper(double mean, int count) {
    double root = 1 - 1.0 / (9 * count) - SURE / (3 * Math.sqrt(count));
    return mean / Math.max(0.05, root * root * root);
  }

  String report() {
    return String.format(
        Locale.ROOT,
        "%-22s %6d frames and lists, largest margin %.2f, acceptances to expect %.1e%n",
        kind,
        shown,
        largest(),
        acceptances());
  }
}
