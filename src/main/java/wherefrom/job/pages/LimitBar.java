package wherefrom.job.pages;

import java.util.OptionalDouble;

/**
 * A result beside its limit, to be drawn on a line. All figures are in one unit.
 *
 * @param uncertainty the standard uncertainty; 0 where none is known
 * @param words the limit in words, such as {@code at most 0.002 in}
 * @param source where the limit comes from
 */
public record LimitBar(
    double value,
    double uncertainty,
    OptionalDouble lower,
    OptionalDouble upper,
    String words,
    String source) {

  private static final double BEYOND = 0.4;

  /** A stretch of the line. */
  public record Span(double least, double most) {

    /** Where a value lies, 0 at the beginning and 1 at the end. */
    public double part(double value) {
      return Math.max(0, Math.min(1, (value - least) / (most - least)));
    }
  }

  /** A stretch that shows the limit, and the result with two standard uncertainties. */
  public Span span() {
    double low = Math.min(value - 2 * uncertainty, lower.orElse(upper.orElse(value)));
    double high = Math.max(value + 2 * uncertainty, upper.orElse(lower.orElse(value)));
    if (lower.isEmpty() && value >= 0) {
      low = Math.min(low, 0);
    }
    double wide = high > low ? high - low : Math.max(Math.abs(value), 1);
    boolean atZero = lower.isEmpty() && low == 0;
    return new Span(atZero ? 0 : low - BEYOND * wide, high + BEYOND * wide);
  }
}
