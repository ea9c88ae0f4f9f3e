package wherefrom.workings.timing;

/**
 * One lobe's timing at a stated lift, in crank degrees from top dead centre. The uncertainties are
 * those of the readings, of what lies between them, and for the middle of unequal flanks; the
 * wheel's zero adds {@code centreUncertainty} to opening, closing and middle, all alike, and
 * nothing to the duration.
 */
public record LobeTiming(
    double checkingLift,
    AngleValue openingOnWheel,
    AngleValue closingOnWheel,
    AngleValue middleOnWheel,
    AngleValue duration,
    Flanks flanks,
    double centreUncertainty) {

  /**
   * Where the middle was taken.
   *
   * @param from the lowest lift used, in the unit of the readings
   * @param to the highest
   * @param lean how far the lobe leans: the shift of its middle from the lowest to the highest
   */
  public record Flanks(double from, double to, double lean) {}

  public AngleValue opening() {
    return openingOnWheel.with(centreUncertainty);
  }

  public AngleValue closing() {
    return closingOnWheel.with(centreUncertainty);
  }

  /** The centre line: after top dead centre where positive, before it where negative. */
  public AngleValue centreLine() {
    return middleOnWheel.with(centreUncertainty);
  }
}
