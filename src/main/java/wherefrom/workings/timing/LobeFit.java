package wherefrom.workings.timing;

import java.util.Optional;
import java.util.function.ToDoubleFunction;

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
    return new LobeTiming(
        checkingLift,
        value(LobeEvents::opening),
        value(LobeEvents::closing),
        value(LobeEvents::middle),
        value(e -> e.closing() - e.opening()),
        events.lean(),
        readings.centreUncertainty());
  }

  private AngleValue value(ToDoubleFunction<LobeEvents> angle) {
    double variance = 0;
    for (int i = 0; i < lifts.length; i++) {
      double effect = effect(i, angle);
      variance += effect * effect;
    }
    return new AngleValue(angle.applyAsDouble(events), Math.sqrt(variance));
  }

  /** How far the angle moves when one reading moves by its standard uncertainty. */
  private double effect(int index, ToDoubleFunction<LobeEvents> angle) {
    double shift = liftUncertainty(index);
    if (shift <= 0) {
      return 0;
    }
    double up = angle.applyAsDouble(moved(index, shift));
    double down = angle.applyAsDouble(moved(index, -shift));
    return (up - down) / 2;
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
