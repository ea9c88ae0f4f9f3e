package wherefrom.job.running;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import wherefrom.job.entry.RunInEnd;
import wherefrom.job.entry.RunInGauge;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;

/**
 * A gauge of the run-in that says: ignition off at once. The figures are those that are usual where
 * the engine's own book gives none: 10 psi of oil for each 1,000 rpm, coolant under 230 °F (both
 * common practice, no source).
 *
 * @param end why the engine is then to be stopped
 * @param sentence what the gauge shows, what would be usual, what to do
 */
public record RunInAlarm(RunInEnd end, String sentence) {
  private static final int RPM = 1_000;
  private static final int PSI = 10;
  private static final MathContext FIGURES = new MathContext(3);
  private static final Amount HOT = Amount.of("230", Unit.FAHRENHEIT);

  /** Empty where the engine may run on. */
  public static Optional<RunInAlarm> find(RunInGauge gauge, Amount reading, RunInPlan plan) {
    return switch (gauge) {
      case OIL_PRESSURE -> oil(reading, plan);
      case COOLANT -> coolant(reading);
    };
  }

  /** The lowest speed of the plan asks for the least: less is too little at every other too. */
  private static Optional<RunInAlarm> oil(Amount reading, RunInPlan plan) {
    Amount least = Amount.of((double) PSI * plan.lowRpm() / RPM, Unit.PSI);
    if (reading.inBase().compareTo(least.inBase()) >= 0) {
      return Optional.empty();
    }
    return Optional.of(
        new RunInAlarm(
            RunInEnd.NO_OIL_PRESSURE,
            "Oil pressure low. Ignition off now. Usual at %d rpm: %s or more."
                .formatted(plan.lowRpm(), shown(least, reading.unit()))));
  }

  private static Optional<RunInAlarm> coolant(Amount reading) {
    if (reading.inBase().compareTo(HOT.inBase()) < 0) {
      return Optional.empty();
    }
    return Optional.of(
        new RunInAlarm(
            RunInEnd.TOO_HOT,
            "Coolant too hot. Ignition off now. Usual: under %s. Cap stays on."
                .formatted(shown(HOT, reading.unit()))));
  }

  /** In the gauge's own unit, in so few figures that it is read at a glance. */
  private static String shown(Amount limit, Unit unit) {
    BigDecimal number = limit.to(unit).number().round(FIGURES);
    return new Amount(number, unit).text();
  }
}
