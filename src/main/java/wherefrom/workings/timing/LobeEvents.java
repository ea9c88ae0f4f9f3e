package wherefrom.workings.timing;

import java.util.OptionalDouble;

/**
 * Opening, closing and middle of one lobe, from one set of lifts, in degrees.
 *
 * @param middle the mean of the points midway between the flanks at equal lift, each weighted by
 *     the steepness of its flanks
 * @param lean how far those midway points move from the lowest to the highest lift used; zero for
 *     an even lobe
 */
record LobeEvents(double opening, double closing, double middle, double lean) {

  static LobeEvents of(double[] angles, double[] lifts, int top, double checkingLift) {
    LobeCurve curve = new LobeCurve(angles, lifts, top);
    Midpoints midpoints = new Midpoints();
    for (double lift : lifts) {
      if (lift >= LobeCurve.LOW * lifts[top] && lift <= LobeCurve.HIGH * lifts[top]) {
        addMidpoint(curve, lift, midpoints);
      }
    }
    return new LobeEvents(
        curve.findRising(checkingLift).orElse(Double.NaN),
        curve.findFalling(checkingLift).orElse(Double.NaN),
        midpoints.mean(),
        midpoints.lean());
  }

  private static void addMidpoint(LobeCurve curve, double lift, Midpoints midpoints) {
    OptionalDouble rising = curve.findRising(lift);
    OptionalDouble falling = curve.findFalling(lift);
    if (rising.isPresent() && falling.isPresent()) {
      double up = curve.slope(rising.getAsDouble());
      double down = curve.slope(falling.getAsDouble());
      double weight = 1 / (1 / (up * up) + 1 / (down * down));
      midpoints.add(lift, (rising.getAsDouble() + falling.getAsDouble()) / 2, weight);
    }
  }

  /** A weighted straight line through midway point against lift. */
  private static final class Midpoints {
    private double weights;
    private double lifts;
    private double angles;
    private double squares;
    private double products;
    private double lowest = Double.POSITIVE_INFINITY;
    private double highest = Double.NEGATIVE_INFINITY;

    void add(double lift, double angle, double weight) {
      weights += weight;
      lifts += weight * lift;
      angles += weight * angle;
      squares += weight * lift * lift;
      products += weight * lift * angle;
      lowest = Math.min(lowest, lift);
      highest = Math.max(highest, lift);
    }

    double mean() {
      return angles / weights;
    }

    double lean() {
      double spread = squares - lifts * lifts / weights;
      double slope = spread > 0 ? (products - lifts * angles / weights) / spread : 0;
      return slope * (highest - lowest);
    }
  }
}
