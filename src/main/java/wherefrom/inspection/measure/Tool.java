package wherefrom.inspection.measure;

import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.workings.catalogue.accept.UncertaintyBudget;

/**
 * A measuring tool of the person's own.
 *
 * @param resolution the smallest step that it shows
 * @param error by how much it may be off, at most, either way
 * @param repeat by how much a repeat may differ, at most, either way
 */
public record Tool(String name, Amount resolution, Amount error, Amount repeat) {
  /** Growth of steel, per degree (from memory, unverified). */
  private static final double STEEL = 11.5e-6;

  /** By how much part and tool may differ from each other, in degrees, where nobody measured it. */
  private static final double DEGREES_OFF = 2;

  public Dimension dimension() {
    return resolution.dimension();
  }

  /**
   * The uncertainty of one reading, each part taken as equally likely within its limits (JCGM
   * 100:2008, 4.3.7): half a step of resolution, the tool's own error, the repeat, and for a length
   * the temperature.
   *
   * @param size the reading, in the given unit
   */
  public UncertaintyBudget budget(double size, Unit unit) {
    UncertaintyBudget budget =
        UncertaintyBudget.empty()
            .withLimits("resolution", resolution.in(unit) / 2)
            .withLimits("tool", error.in(unit))
            .withLimits("repeat", repeat.in(unit));
    return dimension() == Dimension.LENGTH
        ? budget.withTemperature("temperature", Math.abs(size), STEEL, DEGREES_OFF)
        : budget;
  }

  /** The standard uncertainty of the mean of so many readings of one size. */
  public double uncertainty(double size, Unit unit, int readings, double scatter) {
    double single = budget(size, unit).combined();
    if (readings < 2) {
      return single;
    }
    // Repeats tell the scatter better than the tool's card does; the rest stays (JCGM 100, 4.2.3).
    double rest = budget(size, unit).without(java.util.Set.of("repeat")).combined();
    return Math.hypot(rest, scatter / Math.sqrt(readings));
  }
}
