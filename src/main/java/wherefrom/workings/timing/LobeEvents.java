package wherefrom.workings.timing;

/**
 * Opening, closing and middle of one lobe, from one set of lifts, in degrees.
 *
 * @param middle the mean of the points midway between the flanks, from a fifth to four fifths of
 *     the full lift
 * @param overNose how far the middle lies from where those midway points go to towards the full
 *     lift: the farther of what all of them say and of what the highest say
 * @param lean how far they move from the lowest to the highest lift used; zero for an even lobe
 */
record LobeEvents(double opening, double closing, double middle, double overNose, double lean) {
  /** The part of the full lift from which the flanks are steep enough to be used. */
  static final double LOW = 0.2;

  /** The part of the full lift above which the nose is too round to be used. */
  static final double HIGH = 0.8;

  private static final int LEVELS = 7;

  /** Parts of the full lift that show which way the midway points go towards the nose. */
  private static final double[] NEAR_NOSE = {0.7, 0.8, 0.9, 0.95};

  static LobeEvents of(double[] angles, double[] lifts, int top, double checkingLift) {
    LobeCurve curve = new LobeCurve(angles, lifts, top);
    Line flanks = new Line();
    Line roots = new Line();
    for (int level = 0; level < LEVELS; level++) {
      double part = LOW + (HIGH - LOW) * level / (LEVELS - 1);
      double midpoint = curve.midpoint(part * lifts[top]);
      flanks.add(part, midpoint);
      roots.add(root(part), midpoint);
    }
    Line nose = new Line();
    for (double part : NEAR_NOSE) {
      nose.add(root(part), curve.midpoint(part * lifts[top]));
    }
    double middle = flanks.mean();
    return new LobeEvents(
        curve.findRising(checkingLift).orElse(Double.NaN),
        curve.findFalling(checkingLift).orElse(Double.NaN),
        middle,
        Math.max(Math.abs(middle - roots.at(0)), Math.abs(middle - nose.at(0))),
        flanks.slope() * (HIGH - LOW));
  }

  double duration() {
    return closing - opening;
  }

  /** A nose is round: near it the flanks part like the root of what misses of the full lift. */
  private static double root(double part) {
    return Math.sqrt(1 - part);
  }

  /** How far the middle lies from midway between the events. */
  double overEvents() {
    return middle - (opening + closing) / 2;
  }

  boolean isWhole() {
    return Double.isFinite(opening + closing + middle + overNose);
  }

  /** A straight line by least squares. */
  private static final class Line {
    private int count;
    private double across;
    private double up;
    private double squares;
    private double products;

    void add(double x, double y) {
      count++;
      across += x;
      up += y;
      squares += x * x;
      products += x * y;
    }

    double mean() {
      return up / count;
    }

    double slope() {
      return (products - across * up / count) / (squares - across * across / count);
    }

    double at(double x) {
      return mean() + slope() * (x - across / count);
    }
  }
}
