package wherefrom.workings.timing;

/**
 * How well the curve between the readings is known: each reading in turn is left out, and how far
 * the results move tells what is not seen between two others. Leaving one out doubles the step
 * there; where the acceleration jumps, as at the end of a ramp, the error of a cubic spline grows
 * with the square of the step, elsewhere faster. A quarter of the shift would do for one reading of
 * a known place; three tenths hold 95 % of lobes (held by simulation over lobes of many shapes).
 */
final class LeftOut {
  private static final double PART = 0.3;

  private final double[] angles;
  private final double[] lifts;
  private final int top;
  private final double checkingLift;
  private final LobeEvents whole;
  private final Shifts opening = new Shifts();
  private final Shifts closing = new Shifts();
  private final Shifts middle = new Shifts();

  private LeftOut(double[] angles, double[] lifts, int top, double checkingLift, LobeEvents whole) {
    this.angles = angles.clone();
    this.lifts = lifts.clone();
    this.top = top;
    this.checkingLift = checkingLift;
    this.whole = whole;
  }

  static LeftOut of(double[] angles, double[] lifts, int top, double lift, LobeEvents whole) {
    LeftOut leftOut = new LeftOut(angles, lifts, top, lift, whole);
    for (int at = 1; at < angles.length - 1; at++) {
      if (at != top) {
        leftOut.leaveOut(at);
      }
    }
    return leftOut;
  }

  private void leaveOut(int at) {
    LobeEvents others =
        LobeEvents.of(
            without(angles, at), without(lifts, at), at < top ? top - 1 : top, checkingLift);
    if (isBeside(at, whole.opening())) {
      opening.add(others.opening() - whole.opening());
    }
    if (isBeside(at, whole.closing())) {
      closing.add(others.closing() - whole.closing());
    }
    middle.add(others.middle() - whole.middle());
  }

  /** Whether the reading is the last before an angle or the first after it. */
  private boolean isBeside(int at, double angle) {
    return angles[at] <= angle ? angle <= angles[at + 1] : angle >= angles[at - 1];
  }

  private static double[] without(double[] all, int at) {
    double[] fewer = new double[all.length - 1];
    System.arraycopy(all, 0, fewer, 0, at);
    System.arraycopy(all, at + 1, fewer, at, fewer.length - at);
    return fewer;
  }

  /** Whether both events lie between readings that can be done without. */
  boolean isKnown() {
    return opening.count > 0 && closing.count > 0 && middle.count > 0;
  }

  /** Standard uncertainty of the opening between the readings, in degrees. */
  double opening() {
    return PART * Math.sqrt(opening.squares / opening.count);
  }

  double closing() {
    return PART * Math.sqrt(closing.squares / closing.count);
  }

  /** Every reading takes its part in the middle. */
  double middle() {
    return PART * Math.sqrt(middle.squares);
  }

  private static final class Shifts {
    private int count;
    private double squares;

    void add(double shift) {
      if (Double.isFinite(shift)) {
        count++;
        squares += shift * shift;
      }
    }
  }
}
