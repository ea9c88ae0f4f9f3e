package wherefrom.workings.plan;

import java.util.List;
import java.util.OptionalDouble;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.ResultValue;
import wherefrom.workings.catalogue.Acceptance;

/**
 * The clearance of each journal against its limits.
 *
 * @param unit of all figures
 */
public record ClearancePlot(Unit unit, List<Bar> bars) {

  /** One journal; low and high are the band of ±2·u. Without a limit it stays undecided. */
  public record Bar(
      String journal,
      double clearance,
      double low,
      double high,
      OptionalDouble lowerLimit,
      OptionalDouble upperLimit,
      Acceptance.Decision decision) {}

  /** A clearance as worked out, with the limits of the engine in the same unit. */
  public record Reading(
      String journal,
      ResultValue clearance,
      OptionalDouble lowerLimit,
      OptionalDouble upperLimit) {}

  public ClearancePlot {
    bars = List.copyOf(bars);
  }

  /** All bars in one unit; the readings may be in others, their limits with them. */
  public static ClearancePlot of(Unit unit, List<Reading> readings) {
    return new ClearancePlot(unit, readings.stream().map(reading -> bar(unit, reading)).toList());
  }

  private static Bar bar(Unit unit, Reading reading) {
    ResultValue clearance = reading.clearance();
    double value = clearance.amount().in(unit);
    double u = Amount.of(clearance.standardUncertainty(), clearance.unit()).in(unit);
    OptionalDouble lower = converted(reading.lowerLimit(), clearance.unit(), unit);
    OptionalDouble upper = converted(reading.upperLimit(), clearance.unit(), unit);
    double band = Plot.COVERAGE * u;
    boolean limited = lower.isPresent() || upper.isPresent();
    Acceptance.Decision decision =
        limited ? new Acceptance(value, u, lower, upper).decision() : Acceptance.Decision.UNDECIDED;
    return new Bar(reading.journal(), value, value - band, value + band, lower, upper, decision);
  }

  private static OptionalDouble converted(OptionalDouble limit, Unit from, Unit to) {
    return limit.isEmpty() ? limit : OptionalDouble.of(Amount.of(limit.getAsDouble(), from).in(to));
  }
}
