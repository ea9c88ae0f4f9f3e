package wherefrom.scan;

import wherefrom.job.reader.Sighting;
import wherefrom.parts.TagCode;
import wherefrom.scan.geometry.CameraModel;
import wherefrom.scan.geometry.Pose;

/** Readings as the rest of the program sees them. */
final class Sightings {
  private Sightings() {}

  static Sighting of(Pose pose, PoseReading.Text text, CameraModel camera) {
    Sighting.Basis decoded =
        TagCode.find(text.digits()).isPresent() ? Sighting.Basis.DECODED : Sighting.Basis.FOREIGN;
    return new Sighting(
        text.digits(), text.issued() ? Sighting.Basis.ISSUED : decoded, pose.corners(camera));
  }
}
