package wherefrom.workings.timing;

import java.util.OptionalDouble;
import org.hipparchus.analysis.interpolation.SplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;

/**
 * A smooth curve through the readings of one lobe, and where its flanks pass a lift. It is the
 * natural cubic spline: a cam's acceleration has no jumps but for those of its ramps.
 */
final class LobeCurve {
  private static final int HALVINGS = 48;

  private final double[] angles;
  private final double[] lifts;
  private final int top;
  private final PolynomialSplineFunction curve;

  LobeCurve(double[] angles, double[] lifts, int top) {
    this.angles = angles.clone();
    this.lifts = lifts.clone();
    this.top = top;
    this.curve = new SplineInterpolator().interpolate(angles, lifts);
  }

  /** Midway between both flanks at a lift; not a number where one of them does not reach down. */
  double midpoint(double lift) {
    return (findRising(lift).orElse(Double.NaN) + findFalling(lift).orElse(Double.NaN)) / 2;
  }

  /** Where the rising flank passes the lift, looking down from the nose. */
  OptionalDouble findRising(double lift) {
    for (int i = top; i > 0; i--) {
      if (lifts[i - 1] < lift && lifts[i] >= lift) {
        return OptionalDouble.of(crossing(angles[i - 1], angles[i], lift));
      }
    }
    return OptionalDouble.empty();
  }

  /** Where the falling flank passes the lift, looking down from the nose. */
  OptionalDouble findFalling(double lift) {
    for (int i = top; i < lifts.length - 1; i++) {
      if (lifts[i + 1] < lift && lifts[i] >= lift) {
        return OptionalDouble.of(crossing(angles[i + 1], angles[i], lift));
      }
    }
    return OptionalDouble.empty();
  }

  /** The curve lies below the lift at the first angle, not at the second. */
  private double crossing(double below, double above, double lift) {
    double low = below;
    double high = above;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = low + (high - low) / 2;
      if (curve.value(middle) < lift) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low + (high - low) / 2;
  }
}
