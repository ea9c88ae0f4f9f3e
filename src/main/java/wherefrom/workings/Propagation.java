package wherefrom.workings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wherefrom.quantity.Unit;
import wherefrom.workings.maths.DoubleDouble;

/**
 * The law of propagation of uncertainty for uncorrelated inputs, to first order (JCGM 100:2008,
 * 5.1.2, equation 10).
 */
final class Propagation {
  /** Where inputs cancel, what is left of the slopes is rounding, not uncertainty. */
  private static final double ROUNDING = 1e-13;

  /**
   * In base units: what is left where equal amounts in two units, 0.254 mm and 0.010 in, cancel.
   */
  private static final double NOTHING = 1e-24;

  private final List<InputSpec> inputs;
  private final double[] uncertainties;

  /** The uncertainties are in base units, in the order of the inputs. */
  Propagation(List<InputSpec> inputs, double[] uncertainties) {
    this.inputs = List.copyOf(inputs);
    this.uncertainties = uncertainties.clone();
  }

  ResultValue carry(Figure figure) {
    double variance = 0;
    for (int i = 0; i < uncertainties.length; i++) {
      variance += part(figure, i);
    }
    if (Math.sqrt(variance) <= ROUNDING * Math.abs(figure.inBase().toDouble())) {
      variance = 0;
    }
    Unit unit = figure.unit();
    double value = inUnit(figure.inBase().value(), unit);
    double u = inUnit(DoubleDouble.of(Math.sqrt(variance)), unit);
    return new ResultValue(
        figure.key(), figure.words(), unit, value, u, shares(figure, variance), figure.rounding());
  }

  private double part(Figure figure, int index) {
    if (uncertainties[index] <= 0) {
      return 0;
    }
    double spread = figure.inBase().slope(index) * uncertainties[index];
    return spread * spread;
  }

  private List<Share> shares(Figure figure, double variance) {
    List<Share> shares = new ArrayList<>();
    if (variance <= 0) {
      return shares;
    }
    for (int i = 0; i < uncertainties.length; i++) {
      double part = part(figure, i);
      if (part > 0) {
        InputSpec input = inputs.get(i);
        shares.add(new Share(input.key(), input.words(), part / variance));
      }
    }
    shares.sort(Comparator.comparingDouble(Share::fraction).reversed());
    return shares;
  }

  private static double inUnit(DoubleDouble base, Unit unit) {
    if (Math.abs(base.high()) < NOTHING) {
      return 0;
    }
    return base.times(DoubleDouble.of(unit.denominator()))
        .dividedBy(DoubleDouble.of(unit.numerator()))
        .toDouble();
  }
}
