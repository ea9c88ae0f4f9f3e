package wherefrom.workings.maths;

/**
 * A mark on a degree wheel, where 360° and 0° are one. Two marks are never subtracted or averaged
 * as plain numbers: 340° and 24° lie 44° apart, with 2° midway.
 *
 * @param degrees as read, on whatever turn
 */
public record WheelAngle(DualNumber degrees) {
  private static final double TURN = 360;

  /** In degrees: marks nearer than this to half a turn apart may be taken either way round. */
  private static final double ALIKE = 1e-9;

  /** The way from the other mark to this one, the shorter way round: over −180° to 180°. */
  public DualNumber from(WheelAngle other) {
    return near(degrees.minus(other.degrees), 0);
  }

  /** Whether both lie half a turn apart, so that neither way round is the shorter. */
  public boolean isOpposite(WheelAngle other) {
    return TURN / 2 - Math.abs(from(other).toDouble()) < ALIKE;
  }

  /**
   * The mark midway on the shorter way between both. On a wheel that was read in negative degrees
   * it is over −180° to 180°, else 0° to under 360°.
   */
  public DualNumber midway(WheelAngle other) {
    DualNumber middle = degrees.plus(other.from(this).times(0.5));
    boolean signed = degrees.toDouble() < 0 || other.degrees.toDouble() < 0;
    DualNumber near = near(middle, signed ? 0 : TURN / 2);
    return near.toDouble() >= TURN ? near.minus(DualNumber.of(TURN)) : near;
  }

  private static DualNumber near(DualNumber angle, double about) {
    return angle.minus(DualNumber.of(TURN * turns(angle.toDouble(), about)));
  }

  /** The same mark within half a turn of another angle. */
  public static double near(double angle, double about) {
    return angle - TURN * turns(angle, about);
  }

  private static double turns(double angle, double about) {
    return Math.ceil((angle - about) / TURN - 0.5);
  }
}
