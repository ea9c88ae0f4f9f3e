package wherefrom.scan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Corner;
import wherefrom.job.reader.Sighting;
import wherefrom.job.reader.Unread;
import wherefrom.scan.geometry.CameraModel;
import wherefrom.scan.geometry.LabelPattern;
import wherefrom.scan.geometry.Pose;

/**
 * The places of a picture that look like a tag and were not read, each tag once: a search comes
 * upon one label from its frame, from each of its finders and at several sizes.
 */
final class UnreadPlaces {
  /** Fit of the pattern above which a place that was not read is shown to the person. */
  private static final double LOOKS_LIKE_A_TAG = 0.55;

  /** Two centres nearer than so many modules of the larger one are of one label. */
  private static final double NEAR = 14;

  private UnreadPlaces() {}

  /**
   * Lists them.
   *
   * @param readings all places that were looked at
   * @param sightings what was read on the same picture: what lies on it is no other tag
   * @return the best fitting place of each tag, with a cause
   */
  static List<Unread> list(
      GreyImage picture,
      LabelPattern pattern,
      CameraModel camera,
      List<PoseReading> readings,
      List<Sighting> sightings) {
    List<Pose> kept = new ArrayList<>();
    readings.stream()
        .filter(reading -> reading.text().isEmpty() && reading.pattern() > LOOKS_LIKE_A_TAG)
        .sorted(Comparator.comparingDouble(PoseReading::pattern).reversed())
        .map(PoseReading::pose)
        .filter(pose -> sightings.stream().noneMatch(seen -> lies(pose, seen)))
        .forEach(
            pose -> {
              if (kept.stream().noneMatch(other -> isOne(pose, other))) {
                kept.add(pose);
              }
            });
    return kept.stream()
        .map(pose -> new Unread(Causes.of(picture, pose, pattern, camera), pose.corners(camera)))
        .toList();
  }

  private static boolean isOne(Pose pose, Pose other) {
    double apart = Math.hypot(pose.centreX() - other.centreX(), pose.centreY() - other.centreY());
    return apart < NEAR * Math.max(pose.module(), other.module());
  }

  private static boolean lies(Pose pose, Sighting seen) {
    double x = seen.corners().stream().mapToDouble(Corner::x).average().orElse(0);
    double y = seen.corners().stream().mapToDouble(Corner::y).average().orElse(0);
    double apart = Math.hypot(pose.centreX() - x, pose.centreY() - y);
    return apart < NEAR * Math.max(pose.module(), module(seen.corners()));
  }

  /** A side of the outline is as many modules as the symbol is wide. */
  private static double module(List<Corner> outline) {
    double longest = 0;
    for (int at = 0; at < outline.size(); at++) {
      Corner one = outline.get(at);
      Corner next = outline.get((at + 1) % outline.size());
      longest = Math.max(longest, Math.hypot(one.x() - next.x(), one.y() - next.y()));
    }
    return longest / (2 * Pose.HALF);
  }
}
