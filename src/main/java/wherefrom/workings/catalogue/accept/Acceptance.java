package wherefrom.workings.catalogue.accept;

import java.util.OptionalDouble;
import org.hipparchus.special.Erf;

/**
 * The decision rule of ISO 14253-1:2017 (from two secondary texts, clauses not read): the measuring
 * uncertainty counts against whoever claims, with the guard band g = 1.65·u. Value, uncertainty and
 * limits are in one unit.
 */
public record Acceptance(
    double value, double standardUncertainty, OptionalDouble lower, OptionalDouble upper) {
  public static final double GUARD_FACTOR = 1.65;

  /** What may be said about a reading. */
  public enum Ruling {
    ACCEPT,
    UNDECIDED,
    REJECT
  }

  /**
   * @throws IllegalArgumentException where no limit is given, the limits are swapped, or the
   *     uncertainty is negative
   */
  public Acceptance {
    boolean noLimit = lower.isEmpty() && upper.isEmpty();
    boolean swapped = lower.isPresent() && upper.isPresent() && lowest(lower) > highest(upper);
    if (noLimit || swapped || standardUncertainty < 0) {
      throw new IllegalArgumentException("a reading needs a limit and an uncertainty of 0 or more");
    }
  }

  public double guardBand() {
    return GUARD_FACTOR * standardUncertainty;
  }

  public Ruling decision() {
    double g = guardBand();
    if (value < lowest(lower) - g || value > highest(upper) + g) {
      return Ruling.REJECT;
    }
    boolean inside = value >= lowest(lower) + g && value <= highest(upper) - g;
    return inside ? Ruling.ACCEPT : Ruling.UNDECIDED;
  }

  /** Whether any reading at all could be accepted with this uncertainty. */
  public boolean canAccept() {
    return lowest(lower) + guardBand() <= highest(upper) - guardBand();
  }

  /** The chance that the true value lies within the limits, for a normal error. */
  public double probability() {
    return below(highest(upper)) - below(lowest(lower));
  }

  private double below(double limit) {
    if (Double.isInfinite(limit) || standardUncertainty <= 0) {
      return value <= limit ? 1 : 0;
    }
    double t = (limit - value) / (standardUncertainty * Math.sqrt(2));
    return 0.5 * (1 + Erf.erf(t));
  }

  private static double lowest(OptionalDouble limit) {
    return limit.orElse(Double.NEGATIVE_INFINITY);
  }

  private static double highest(OptionalDouble limit) {
    return limit.orElse(Double.POSITIVE_INFINITY);
  }
}
