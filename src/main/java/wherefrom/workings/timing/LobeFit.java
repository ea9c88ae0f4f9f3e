package wherefrom.workings.timing;

import java.util.Optional;

/**
 * Fits a lobe to its dial readings. The middle comes from both flanks between a fifth and four
 * fifths of the full lift, not from the flat nose; the events are where the curve passes the stated
 * lift. Its uncertainty is made of three parts: that of every single reading, carried through to
 * first order (JCGM 100:2008, 5.1.2) with each sensitivity found by moving that reading; what is
 * not seen between the readings ({@link LeftOut}); and for the middle what the flanks leave open by
 * being unequal.
 */
public final class LobeFit {
  /** A lean of so many standard uncertainties is by chance in one lobe of eighty (normal error). */
  private static final double BY_CHANCE = 2.5;

  private final LobeReadings readings;
  private final double checkingLift;
  private final double[] angles;
  private final double[] lifts;
  private final LobeEvents events;
  private final LeftOut between;

  private LobeFit(LobeReadings readings, double checkingLift) {
    this.readings = readings;
    this.checkingLift = checkingLift;
    this.angles = readings.angles();
    this.lifts = readings.lifts();
    this.events = LobeEvents.of(angles, lifts, readings.top(), checkingLift);
    this.between = LeftOut.of(angles, lifts, readings.top(), checkingLift, events);
  }

  /** Opening, closing, duration and centre line at the stated lift. */
  public static LobeAnswer fit(LobeReadings readings, double checkingLift) {
    Optional<String> fault = readings.findFault(checkingLift);
    if (fault.isPresent()) {
      return new LobeAnswer.Unfit(fault.get());
    }
    LobeFit fit = new LobeFit(readings, checkingLift);
    return fit.events.isWhole() && fit.between.isKnown()
        ? new LobeAnswer.Fitted(fit.timing())
        : new LobeAnswer.Unfit("Too few readings are on the flanks. Take them closer together.");
  }

  private LobeTiming timing() {
    Spreads read = new Spreads();
    for (int i = 0; i < lifts.length; i++) {
      double shift = liftUncertainty(i);
      if (shift > 0) {
        read.add(moved(i, shift), moved(i, -shift));
      }
    }
    double opening = Math.hypot(Math.sqrt(read.opening), between.opening());
    double closing = Math.hypot(Math.sqrt(read.closing), between.closing());
    double unseen = Math.hypot(between.opening(), between.closing());
    double full = lifts[readings.top()];
    return new LobeTiming(
        checkingLift,
        new AngleValue(events.opening(), opening),
        new AngleValue(events.closing(), closing),
        new AngleValue(events.middle(), Math.sqrt(middleVariance(read))),
        new AngleValue(events.duration(), Math.hypot(Math.sqrt(read.duration), unseen)),
        new LobeTiming.Flanks(LobeEvents.LOW * full, LobeEvents.HIGH * full, events.lean()),
        readings.centreUncertainty());
  }

  private double middleVariance(Spreads read) {
    return read.middle + between.middle() * between.middle() + unequalFlanks(read);
  }

  /**
   * Unequal flanks have no one middle: a card may mean the nose, or midway between the events. The
   * farther of both is taken as the end of an arc sine distribution, whose standard uncertainty is
   * its half-width over √2 (JCGM 101:2008, 6.4.6; clause from memory). Where the readings' own
   * scatter could make all of the lean, the flanks count as equal.
   */
  private double unequalFlanks(Spreads read) {
    double seen =
        Math.max(share(events.lean(), read.lean), share(events.overEvents(), read.overEvents));
    double farthest = Math.max(events.overNose(), Math.abs(events.overEvents()));
    return seen * farthest * farthest / 2;
  }

  /** The part of a square that is more than chance; none up to {@link #BY_CHANCE}. */
  private static double share(double size, double variance) {
    double chance = BY_CHANCE * BY_CHANCE * variance;
    return size * size <= chance ? 0 : 1 - chance / (size * size);
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

  /** Variances that the single readings bring into the results. */
  private static final class Spreads {
    private double opening;
    private double closing;
    private double middle;
    private double duration;
    private double lean;
    private double overEvents;

    /** What one reading brings, moved up and down by its uncertainty. */
    void add(LobeEvents up, LobeEvents down) {
      opening += part(up.opening(), down.opening());
      closing += part(up.closing(), down.closing());
      middle += part(up.middle(), down.middle());
      duration += part(up.duration(), down.duration());
      lean += part(up.lean(), down.lean());
      overEvents += part(up.overEvents(), down.overEvents());
    }

    private static double part(double up, double down) {
      return (up - down) * (up - down) / 4;
    }
  }
}
