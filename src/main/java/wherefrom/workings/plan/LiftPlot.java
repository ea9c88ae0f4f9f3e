package wherefrom.workings.plan;

import java.util.ArrayList;
import java.util.List;
import wherefrom.quantity.Unit;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;

/**
 * The valve lift beside what limits it.
 *
 * @param lift the valve lift, in {@code unit}
 * @param bars one for each limit that is known
 */
public record LiftPlot(Unit unit, double lift, List<Bar> bars) {

  /**
   * One limit.
   *
   * @param stop the lift at which it touches
   * @param usualMost the lift that keeps the usual least margin
   * @param band ±2·u of the margin
   */
  public record Bar(LiftLimit limit, double stop, double usualMost, double band) {}

  public LiftPlot {
    bars = List.copyOf(bars);
  }

  /** Empty where the column has no lift. */
  public static java.util.Optional<LiftPlot> of(PlanColumn column) {
    Result result = column.result();
    return result.findValue("lift").map(lift -> of(result, lift));
  }

  private static LiftPlot of(Result result, ResultValue lift) {
    List<Bar> bars = new ArrayList<>();
    for (LiftLimit limit : LiftLimit.values()) {
      result
          .findValue(limit.key())
          .map(gap -> new Margin(gap, limit.least()))
          .ifPresent(margin -> bars.add(bar(limit, lift, margin)));
    }
    return new LiftPlot(lift.unit(), lift.value(), bars);
  }

  private static Bar bar(LiftLimit limit, ResultValue lift, Margin margin) {
    double stop = lift.value() + margin.result().value();
    double band = Plot.COVERAGE * margin.result().standardUncertainty();
    return new Bar(limit, stop, lift.value() + margin.left(), band);
  }
}
