package wherefrom.scan.find;

import wherefrom.scan.geometry.Pose;

/**
 * A place where a tag may lie.
 *
 * @param score how well the pattern of every label lies over it, to 1
 */
public record Candidate(Pose pose, double score) {

  /** Whether another lies at the same place the same way round, within a module or so. */
  public boolean isSame(Candidate other) {
    double x = pose.centreX() - other.pose.centreX();
    double y = pose.centreY() - other.pose.centreY();
    double near = 1.2 * pose.module();
    if (x * x + y * y > near * near) {
      // the centres lie no farther apart than the corners do on average
      return false;
    }
    double far = 0;
    for (int corner = 0; corner < 4; corner++) {
      far +=
          Math.hypot(pose.x(corner) - other.pose.x(corner), pose.y(corner) - other.pose.y(corner));
    }
    return far / 4 < near && pose.isBent() == other.pose.isBent();
  }
}
