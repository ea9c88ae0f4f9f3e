package wherefrom.workings.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.Inputs;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;
import wherefrom.workings.catalogue.compression.ChamberForRatio;
import wherefrom.workings.catalogue.compression.RatioAfterCut;

/** The compression ratio against the cut of the head, with its band and the target. */
public final class RatioPlot {
  private static final PlanWorking WORKING = new PlanWorking();

  private RatioPlot() {}

  /**
   * From no cut to the deepest, in so many steps. Cuts that leave no chamber are left out; empty
   * where the column lacks an input of the ratio.
   */
  public static Optional<Plot> of(Inputs column, Amount deepest, int steps) {
    List<Plot.Point> points = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      double cut = deepest.number().doubleValue() * i / steps;
      ratio(column, Amount.of(cut, deepest.unit()))
          .ifPresent(
              ratio -> points.add(Plot.Point.of(cut, ratio.value(), ratio.standardUncertainty())));
    }
    if (points.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Plot(
            "Compression ratio against the cut",
            "cut off the head",
            deepest.unit(),
            "compression ratio",
            Unit.ONE,
            List.of(new Plot.Curve("ratio", points)),
            target(column)));
  }

  private static Optional<ResultValue> ratio(Inputs column, Amount cut) {
    return WORKING.compute(column.with(RatioAfterCut.HEAD_CUT.key(), cut)) instanceof Result result
        ? result.findValue("ratio")
        : Optional.empty();
  }

  private static List<Plot.Level> target(Inputs column) {
    return column
        .findMeasured(ChamberForRatio.TARGET.key())
        .map(target -> new Plot.Level("wanted", target.value().in(Unit.ONE)))
        .stream()
        .toList();
  }
}
