package wherefrom.job.running;

import wherefrom.engine.LifterType;
import wherefrom.inspection.Sources;
import wherefrom.job.entry.RunInBegun;

/**
 * How an engine is to be run in.
 *
 * @param lowRpm the least speed in rpm, 300 to 8,000
 * @param highRpm the highest speed in rpm, not under the least
 * @param minutes in all, 1 to 240
 * @param source where the figures come from
 */
public record RunInPlan(int lowRpm, int highRpm, int minutes, String source) {
  /** The longest run-in, in minutes (common practice, no source). */
  public static final int MOST_MINUTES = 240;

  /** No engine idles slower (common practice, no source). */
  private static final int LEAST_RPM = 300;

  /** None is run in faster (common practice, no source). */
  private static final int MOST_RPM = 8_000;

  /**
   * @throws IllegalArgumentException with a plain sentence where a figure is out of its range or
   *     the source is missing
   */
  public RunInPlan {
    source = source.strip();
    if (lowRpm < LEAST_RPM || highRpm > MOST_RPM || highRpm < lowRpm) {
      throw new IllegalArgumentException(
          "The speed is from " + LEAST_RPM + " to " + MOST_RPM + " rpm, the lower figure first.");
    }
    if (minutes < 1 || minutes > MOST_MINUTES) {
      throw new IllegalArgumentException("A run-in takes 1 to " + MOST_MINUTES + " minutes.");
    }
    if (source.isEmpty()) {
      throw new IllegalArgumentException("Name where the figures come from.");
    }
  }

  /** What is usual: long and quick for flat lifters, shorter and slower for rollers. */
  public static RunInPlan usual(LifterType lifters) {
    return switch (lifters) {
      case FLAT -> new RunInPlan(1_500, 2_500, 20, Sources.PRACTICE);
      case ROLLER -> new RunInPlan(1_000, 1_500, 10, Sources.PRACTICE);
    };
  }

  /**
   * Reads a speed as it is typed: one figure, or the least and the highest with a hyphen.
   *
   * @throws IllegalArgumentException with a plain sentence where it is none
   */
  public static RunInPlan read(String speed, int minutes, String source) {
    String[] ends = speed.replaceAll("(?i)rpm|\\s|,", "").split("[-\u2013]", -1);
    try {
      int low = Integer.parseInt(ends[0]);
      int high = ends.length > 1 ? Integer.parseInt(ends[1]) : low;
      if (ends.length <= 2) {
        return new RunInPlan(low, high, minutes, source);
      }
    } catch (NumberFormatException e) {
      // Said below.
    }
    throw new IllegalArgumentException("\"" + speed + "\" is not a speed. Type it like 1500-2500.");
  }

  static RunInPlan of(RunInBegun begun) {
    return new RunInPlan(begun.lowRpm(), begun.highRpm(), begun.minutes(), begun.source());
  }

  /** {@code 1500 to 2500 rpm}. */
  public String speed() {
    return lowRpm == highRpm ? lowRpm + " rpm" : lowRpm + " to " + highRpm + " rpm";
  }

  public String words() {
    return minutes + " min at " + speed();
  }
}
