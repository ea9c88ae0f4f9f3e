package wherefrom.job.numbers;

import java.math.BigDecimal;
import java.util.Optional;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Measured;
import wherefrom.quantity.Unit;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Inputs;
import wherefrom.workings.catalogue.compression.ChamberForRatio;
import wherefrom.workings.catalogue.compression.CombustionSpace;
import wherefrom.workings.catalogue.compression.RatioAfterCut;
import wherefrom.workings.catalogue.valvetrain.ValveLift;
import wherefrom.workings.plan.PlanColumn;

/** Moves one figure of the plan by the step that is usual for it. */
public final class PlanStepper {
  /** What can be stepped, in the order offered. */
  public enum Stepped {
    RATIO(ChamberForRatio.TARGET, "0.1"),
    HEAD_CUT(RatioAfterCut.HEAD_CUT, ""),
    DECK_CUT(RatioAfterCut.DECK_CUT, ""),
    GASKET(CombustionSpace.GASKET_THICKNESS, ""),
    ROCKER_RATIO(ValveLift.ROCKER_RATIO, "0.05"),
    LOBE_LIFT(ValveLift.LOBE_LIFT, "");

    private final String key;
    private final String step;

    Stepped(AmountInput input, String step) {
      this.key = input.key();
      this.step = step;
    }

    /** The key of the input that is stepped. */
    public String key() {
      return key;
    }

    private BigDecimal step(Unit unit) {
      if (!step.isEmpty()) {
        return new BigDecimal(step);
      }
      return unit == Unit.MILLIMETRE ? METRIC_STEP : unit == Unit.THOU ? BigDecimal.ONE : INCH_STEP;
    }
  }

  private static final BigDecimal INCH_STEP = new BigDecimal("0.001");
  private static final BigDecimal METRIC_STEP = new BigDecimal("0.02");

  private final PlanBook book;

  public PlanStepper(PlanBook book) {
    this.book = book;
  }

  /** What the column holds now: its own figure, or that of now. */
  public Optional<Amount> find(int column, Stepped figure) {
    return book.all(column).findMeasured(figure.key()).map(Measured::value);
  }

  /** One step up or down. */
  public FigureOutcome step(int column, Stepped figure, int direction) {
    if (column == 0 && PlanGroup.isChange(figure.key())) {
      return new FigureOutcome.Refused("Choose an idea. The column Now stays as it is.");
    }
    Optional<Amount> start = find(column, figure).or(() -> start(column, figure));
    if (start.isEmpty()) {
      return new FigureOutcome.Refused("Type this figure once. Then the steps move it.");
    }
    Amount from = start.get();
    BigDecimal moved =
        from.number().add(figure.step(from.unit()).multiply(BigDecimal.valueOf(direction)));
    if (moved.signum() < 0) {
      return new FigureOutcome.Refused("It cannot be less than 0.");
    }
    return book.set(column, figure.key(), new Amount(moved, from.unit()).text());
  }

  /** A cut begins at none, the wanted ratio at the present one. */
  private Optional<Amount> start(int column, Stepped figure) {
    return switch (figure) {
      case HEAD_CUT, DECK_CUT ->
          Optional.of(new Amount(new BigDecimal("0.000"), lengthUnit(book.all(column))));
      case RATIO -> presentRatio();
      default -> Optional.empty();
    };
  }

  private Optional<Amount> presentRatio() {
    return book.work().get(0) instanceof PlanColumn now
        ? now.result().findValue("ratio").map(ratio -> ratio.amount().rounded(1))
        : Optional.empty();
  }

  private static Unit lengthUnit(Inputs inputs) {
    return inputs
        .findMeasured(CombustionSpace.BORE.key())
        .map(bore -> bore.value().unit())
        .filter(unit -> unit == Unit.MILLIMETRE)
        .orElse(Unit.INCH);
  }
}
