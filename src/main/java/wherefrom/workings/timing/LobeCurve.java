package wherefrom.workings.timing;

import java.util.OptionalDouble;
import org.hipparchus.analysis.interpolation.AkimaSplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;

/** A smooth curve through the readings of one lobe, and where its flanks pass a lift. */
final class LobeCurve {
  /** The part of the full lift from which the flanks are steep enough to be used. */
  static final double LOW = 0.2;

  /** The part of the full lift above which the nose is too round to be used. */
  static final double HIGH = 0.8;

  private static final int HALVINGS = 48;

  private final double[] angles;
  private final double[] lifts;
  private final int top;
  private final PolynomialSplineFunction curve;
  private final PolynomialSplineFunction slope;

  LobeCurve(double[] angles, double[] lifts, int top) {
    this.angles = angles.clone();
    this.lifts = lifts.clone();
    this.top = top;
    this.curve = new AkimaSplineInterpolator().interpolate(angles, lifts);
    this.slope = curve.polynomialSplineDerivative();
  }

  double slope(double angle) {
    return slope.value(angle);
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
