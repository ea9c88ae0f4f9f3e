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
    double far = 0;
    for (int corner = 0; corner < 4; corner++) {
      far +=
          Math.hypot(pose.x(corner) - other.pose.x(corner), pose.y(corner) - other.pose.y(corner));
    }
    return far / 4 < 1.2 * pose.module() && pose.isBent() == other.pose.isBent();
  }
}
