package wherefrom.workings.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.ResultValue;
import wherefrom.workings.catalogue.accept.Acceptance;

/**
 * The clearance of each journal against its limits.
 *
 * @param unit of all figures
 */
public record ClearancePlot(Unit unit, List<Bar> bars) {

  /** A clearance with its band of ±2·u. */
  public record Reach(double value, double low, double high) {}

  /**
   * One journal.
   *
   * @param smallest at the position where it is least
   * @param largest at the position where it is most
   * @param decision of both together; empty where no limit with its source judges them
   */
  public record Bar(
      String journal,
      Reach smallest,
      Reach largest,
      OptionalDouble lowerLimit,
      OptionalDouble upperLimit,
      Optional<Acceptance.Ruling> decision) {}

  /** The least and the most of a journal, limits in the same unit, and what was decided. */
  public record Reading(
      String journal,
      ResultValue smallest,
      ResultValue largest,
      OptionalDouble lowerLimit,
      OptionalDouble upperLimit,
      Optional<Acceptance.Ruling> decision) {}

  public ClearancePlot {
    bars = List.copyOf(bars);
  }

  /** All bars in one unit; the readings may be in others, their limits with them. */
  public static ClearancePlot of(Unit unit, List<Reading> readings) {
    return new ClearancePlot(unit, readings.stream().map(reading -> bar(unit, reading)).toList());
  }

  private static Bar bar(Unit unit, Reading reading) {
    Unit from = reading.smallest().unit();
    OptionalDouble lower = converted(reading.lowerLimit(), from, unit);
    OptionalDouble upper = converted(reading.upperLimit(), from, unit);
    return new Bar(
        reading.journal(),
        reach(unit, reading.smallest()),
        reach(unit, reading.largest()),
        lower,
        upper,
        reading.decision());
  }

  private static Reach reach(Unit unit, ResultValue clearance) {
    double value = clearance.amount().in(unit);
    double band = Plot.COVERAGE * uncertainty(unit, clearance);
    return new Reach(value, value - band, value + band);
  }

  private static double uncertainty(Unit unit, ResultValue clearance) {
    return Amount.of(clearance.standardUncertainty(), clearance.unit()).in(unit);
  }

  private static OptionalDouble converted(OptionalDouble limit, Unit from, Unit to) {
    return limit.isEmpty() ? limit : OptionalDouble.of(Amount.of(limit.getAsDouble(), from).in(to));
  }
}
