package wherefrom.workings.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Measured;
import wherefrom.quantity.Unit;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Inputs;
import wherefrom.workings.catalogue.size.BoreShape;

/** A bore's readings over its nominal size, top to bottom, one curve each way. */
public final class BoreShapePlot {
  private BoreShapePlot() {}

  /** Levels 1, 2, 3 are top, middle, bottom. Empty where a reading or the nominal is missing. */
  public static Optional<Plot> of(Inputs inputs, Unit unit) {
    Optional<Measured> nominal = inputs.findMeasured(BoreShape.NOMINAL.key());
    Optional<Plot.Curve> thrust =
        nominal.flatMap(n -> curve("thrust", BoreShape.THRUST, inputs, n, unit));
    Optional<Plot.Curve> axial =
        nominal.flatMap(n -> curve("axial", BoreShape.AXIAL, inputs, n, unit));
    if (thrust.isEmpty() || axial.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Plot(
            "Shape of the bore",
            "level: 1 top, 2 middle, 3 bottom",
            Unit.PIECES,
            "over standard",
            unit,
            List.of(thrust.get(), axial.get()),
            List.of(new Plot.Level("standard", 0))));
  }

  private static Optional<Plot.Curve> curve(
      String name, List<AmountInput> readings, Inputs inputs, Measured nominal, Unit unit) {
    List<Plot.Point> points = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      Optional<Measured> reading = inputs.findMeasured(readings.get(i).key());
      if (reading.isEmpty()) {
        return Optional.empty();
      }
      points.add(point(i + 1, reading.get(), nominal.value(), unit));
    }
    return Optional.of(new Plot.Curve(name, points));
  }

  private static Plot.Point point(int level, Measured reading, Amount nominal, Unit unit) {
    double over =
        reading.value().to(unit).number().subtract(nominal.to(unit).number()).doubleValue();
    return Plot.Point.of(
        level, over, reading.standardUncertainty().map(u -> u.in(unit)).orElse(0.0));
  }
}
