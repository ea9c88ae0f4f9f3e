package wherefrom.workings.timing;

import java.util.Optional;

/**
 * Fits a lobe to its dial readings. The middle comes from both flanks between a fifth and four
 * fifths of the full lift, not from the flat nose, by weighted least squares; the events are where
 * the curve passes the stated lift. The uncertainty is carried through from every single reading,
 * to first order (JCGM 100:2008, 5.1.2), with each sensitivity found by moving that reading.
 */
public final class LobeFit {
  private final LobeReadings readings;
  private final double checkingLift;
  private final double[] angles;
  private final double[] lifts;
  private final LobeEvents events;

  private LobeFit(LobeReadings readings, double checkingLift) {
    this.readings = readings;
    this.checkingLift = checkingLift;
    this.angles = readings.angles();
    this.lifts = readings.lifts();
    this.events = LobeEvents.of(angles, lifts, readings.top(), checkingLift);
  }

  /** Opening, closing, duration and centre line at the stated lift. */
  public static LobeAnswer fit(LobeReadings readings, double checkingLift) {
    Optional<String> fault = readings.findFault(checkingLift);
    if (fault.isPresent()) {
      return new LobeAnswer.Unfit(fault.get());
    }
    LobeFit fit = new LobeFit(readings, checkingLift);
    return Double.isFinite(fit.events.middle())
        ? new LobeAnswer.Fitted(fit.timing())
        : new LobeAnswer.Unfit("Too few readings lie on the flanks: take them closer together.");
  }

  private LobeTiming timing() {
    double[] variances = new double[4];
    for (int i = 0; i < lifts.length; i++) {
      double shift = liftUncertainty(i);
      if (shift > 0) {
        addEffects(variances, moved(i, shift), moved(i, -shift));
      }
    }
    return new LobeTiming(
        checkingLift,
        new AngleValue(events.opening(), Math.sqrt(variances[0])),
        new AngleValue(events.closing(), Math.sqrt(variances[1])),
        new AngleValue(events.middle(), Math.sqrt(variances[2])),
        new AngleValue(events.closing() - events.opening(), Math.sqrt(variances[3])),
        events.lean(),
        readings.centreUncertainty());
  }

  /** Adds what one reading's uncertainty does to opening, closing, middle and duration. */
  private static void addEffects(double[] variances, LobeEvents up, LobeEvents down) {
    double opening = (up.opening() - down.opening()) / 2;
    double closing = (up.closing() - down.closing()) / 2;
    double middle = (up.middle() - down.middle()) / 2;
    double[] effects = {opening, closing, middle, closing - opening};
    for (int k = 0; k < effects.length; k++) {
      variances[k] += effects[k] * effects[k];
    }
  }

  private LobeEvents moved(int index, double shift) {
    double[] others = lifts.clone();
    others[index] += shift;
    return LobeEvents.of(angles, others, readings.top(), checkingLift);
  }

  /** Of the dial, and of the wheel through the slope of the flank there. */
  private double liftUncertainty(int index) {
    int before = Math.max(0, index - 1);
    int after = Math.min(lifts.length - 1, index + 1);
    double slope = (lifts[after] - lifts[before]) / (angles[after] - angles[before]);
    return Math.hypot(readings.liftUncertainty(), slope * readings.angleUncertainty());
  }
}
