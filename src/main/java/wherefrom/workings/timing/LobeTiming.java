package wherefrom.workings.timing;

/**
 * One lobe's timing at a stated lift, in crank degrees from top dead centre. The uncertainties are
 * those of the readings; the wheel's zero adds {@code centreUncertainty} to opening, closing and
 * middle, all alike, and nothing to the duration.
 *
 * @param lean how far the lobe leans: the shift of its middle from low to high lift
 */
public record LobeTiming(
    double checkingLift,
    AngleValue openingOnWheel,
    AngleValue closingOnWheel,
    AngleValue middleOnWheel,
    AngleValue duration,
    double lean,
    double centreUncertainty) {

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
