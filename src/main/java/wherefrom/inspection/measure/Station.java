package wherefrom.inspection.measure;

import java.util.Optional;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitChoice;
import wherefrom.quantity.UnitSystem;

/**
 * One spot at which a plan asks for a reading.
 *
 * @param units what its gauge shows
 * @param span what is plausible here; empty where the plan's bounds hold
 */
public record Station(String key, String words, UnitChoice units, Optional<Span> span) {

  /** From the least to the most, in base units. */
  public record Span(double least, double most) {}

  public Station(String key, String words, Dimension dimension) {
    this(key, words, UnitChoice.of(dimension), Optional.empty());
  }

  static Station of(String key, String words) {
    return new Station(key, words, Dimension.LENGTH);
  }

  static Station in(UnitChoice units, String key, String words) {
    return new Station(key, words, units, Optional.empty());
  }

  /** Something that a reading is taken at, as a speed: its tool does not show it. */
  Station between(Unit unit, double least, double most) {
    return new Station(
        key, words, units, Optional.of(new Span(base(least, unit), base(most, unit))));
  }

  private static double base(double value, Unit unit) {
    return Amount.of(value, unit).inBase().doubleValue();
  }

  public Dimension dimension() {
    return units.dimension();
  }

  /** The unit of a figure that names none. */
  public Unit usual(UnitSystem system) {
    return units.usual(system);
  }
}
