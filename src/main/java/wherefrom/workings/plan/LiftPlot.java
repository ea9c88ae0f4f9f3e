package wherefrom.workings.plan;

import java.util.ArrayList;
import java.util.List;
import wherefrom.quantity.Unit;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;

/**
 * The valve lift beside what limits it. Bands are ±2·u.
 *
 * @param lift the valve lift, in {@code unit}
 * @param band of the lift
 * @param bars one for each limit that is known
 */
public record LiftPlot(Unit unit, double lift, double band, List<Bar> bars) {

  /**
   * One limit.
   *
   * @param stop the lift at which it touches
   * @param usualMost the lift that keeps the usual least margin
   * @param band of {@code stop}
   * @param margin what is left, with the band of the difference and the usual least's source
   */
  public record Bar(LiftLimit limit, double stop, double usualMost, double band, Margin margin) {}

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
          .map(gap -> new Margin(gap, limit.gap()))
          .ifPresent(margin -> bars.add(bar(limit, lift, margin)));
    }
    double band = Plot.COVERAGE * lift.standardUncertainty();
    return new LiftPlot(lift.unit(), lift.value(), band, bars);
  }

  /** The lift's own part is taken out of the gap's variance: it is drawn at the lift. */
  private static Bar bar(LiftLimit limit, ResultValue lift, Margin margin) {
    double stop = lift.value() + margin.result().value();
    double ofGap = margin.result().standardUncertainty();
    double ofLift = lift.standardUncertainty();
    double u = Math.sqrt(Math.max(0, ofGap * ofGap - ofLift * ofLift));
    return new Bar(limit, stop, lift.value() + margin.left(), Plot.COVERAGE * u, margin);
  }
}
