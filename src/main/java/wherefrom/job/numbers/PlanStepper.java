package wherefrom.job.numbers;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Measured;
import wherefrom.quantity.Unit;
import wherefrom.workings.Inputs;

/** Moves one figure of the plan by the step that is usual for it. */
public final class PlanStepper {
  /** What can be stepped, in the order offered. */
  public static final List<String> KEYS =
      List.of("target", "head-cut", "deck-cut", "gasket-thickness", "rocker-ratio", "lobe-lift");

  private static final Map<String, String> NUMBER_STEPS =
      Map.of("target", "0.1", "rocker-ratio", "0.05");
  private static final BigDecimal INCH_STEP = new BigDecimal("0.001");
  private static final BigDecimal METRIC_STEP = new BigDecimal("0.02");

  private final PlanBook book;

  public PlanStepper(PlanBook book) {
    this.book = book;
  }

  /** What the column holds now: its own figure, or that of now. */
  public Optional<Amount> find(int column, String key) {
    return book.all(column).findMeasured(key).map(Measured::value);
  }

  /** One step up or down. */
  public Kept step(int column, String key, int direction) {
    if (column == 0 && PlanGroup.isChange(key)) {
      return new Kept.Refused("Choose an idea. The column Now stays as it is.");
    }
    Optional<Amount> start = find(column, key).or(() -> start(column, key));
    if (start.isEmpty()) {
      return new Kept.Refused("Type this figure once. Then the steps move it.");
    }
    Amount from = start.get();
    BigDecimal moved =
        from.number().add(step(key, from.unit()).multiply(BigDecimal.valueOf(direction)));
    if (moved.signum() < 0) {
      return new Kept.Refused("It cannot be less than 0.");
    }
    return book.set(column, key, new Amount(moved, from.unit()).text());
  }

  private static BigDecimal step(String key, Unit unit) {
    if (NUMBER_STEPS.containsKey(key)) {
      return new BigDecimal(NUMBER_STEPS.get(key));
    }
    return unit == Unit.MILLIMETRE ? METRIC_STEP : unit == Unit.THOU ? BigDecimal.ONE : INCH_STEP;
  }

  /** A cut begins at none, the wanted ratio at the present one. */
  private Optional<Amount> start(int column, String key) {
    if (key.equals("head-cut") || key.equals("deck-cut")) {
      return Optional.of(new Amount(new BigDecimal("0.000"), lengthUnit(book.all(column))));
    }
    if (!key.equals("target")) {
      return Optional.empty();
    }
    return book.work().get(0) instanceof wherefrom.workings.plan.PlanColumn now
        ? now.result().findValue("ratio").map(ratio -> ratio.amount().rounded(1))
        : Optional.empty();
  }

  private static Unit lengthUnit(Inputs inputs) {
    return inputs
        .findMeasured("bore")
        .map(bore -> bore.value().unit())
        .filter(unit -> unit == Unit.MILLIMETRE)
        .orElse(Unit.INCH);
  }
}
