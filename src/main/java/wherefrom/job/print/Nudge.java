package wherefrom.job.print;

/**
 * How far the print is moved on the paper, in steps of half a millimetre.
 *
 * @param right steps to the right, −40 to 40; below 0 to the left
 * @param down steps down, −40 to 40; below 0 up
 */
public record Nudge(int right, int down) {
  /** One step, in millimetres. */
  public static final double STEP_MM = 0.5;

  /** The most steps in any direction. */
  public static final int MOST = 40;

  public static final Nudge NONE = new Nudge(0, 0);

  public Nudge {
    if (Math.abs(right) > MOST || Math.abs(down) > MOST) {
      throw new IllegalArgumentException("nudge out of range: " + right + ", " + down);
    }
  }

  public double rightMm() {
    return right * STEP_MM;
  }

  public double downMm() {
    return down * STEP_MM;
  }
}
