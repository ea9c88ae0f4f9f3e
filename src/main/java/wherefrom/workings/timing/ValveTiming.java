package wherefrom.workings.timing;

/** Intake and exhaust lobe of one cylinder, both on the same wheel and at the same stated lift. */
public record ValveTiming(LobeTiming intake, LobeTiming exhaust) {

  /**
   * From the intake's opening to the exhaust's closing, in crank degrees; negative where there is
   * none. The wheel's zero does not matter.
   */
  public AngleValue overlap() {
    return exhaust.closingOnWheel().from(intake.openingOnWheel());
  }

  /** Between the two lobes' middles, in cam degrees. The wheel's zero does not matter. */
  public AngleValue lobeSeparation() {
    return intake.middleOnWheel().minus(exhaust.middleOnWheel()).times(0.5);
  }

  /** How far the cam stands ahead of splitting the overlap evenly, in crank degrees. */
  public AngleValue advance() {
    AngleValue difference = intake.middleOnWheel().minus(negated(exhaust.middleOnWheel()));
    return negated(difference.times(0.5)).with(intake.centreUncertainty());
  }

  private static AngleValue negated(AngleValue value) {
    return value.times(-1);
  }
}
