package wherefrom.scan;

import java.util.Optional;
import wherefrom.scan.geometry.Pose;
import wherefrom.scan.grid.SoftGrid;

/**
 * A tag followed from frame to frame; its soft values add up, older ones fading.
 *
 * @param grid the sum
 * @param text what was believed last, if anything
 * @param seen number of the frame in which it was last found
 * @param told number of the frame in which its text was last believed
 */
record Track(
    Pose pose, SoftGrid grid, Optional<PoseReading.Text> text, double pattern, int seen, int told) {

  /** How much of the sum so far is kept when a frame comes in. */
  static final double FADE = 0.85;

  static Track begin(PoseReading reading, int frame) {
    return new Track(
        reading.pose(),
        reading.grid(),
        reading.text(),
        reading.pattern(),
        frame,
        reading.text().isPresent() ? frame : Integer.MIN_VALUE);
  }

  /** Whether a pose lies where this tag was, the same way round. */
  boolean isAt(Pose other) {
    double far = 0;
    for (int corner = 0; corner < 4; corner++) {
      far += Math.hypot(pose.x(corner) - other.x(corner), pose.y(corner) - other.y(corner)) / 4;
    }
    return far < 6 * pose.module();
  }

  /** Whether two poses lie on the same spot, whichever way round. */
  boolean overlaps(Pose other) {
    return Math.hypot(pose.centreX() - other.centreX(), pose.centreY() - other.centreY())
        < 12 * Math.max(pose.module(), other.module());
  }
}
