package wherefrom.scan;

import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Unread;
import wherefrom.scan.geometry.CameraModel;
import wherefrom.scan.geometry.Pose;
import wherefrom.scan.geometry.Projection;

/** Why a tag that was found could not be read. */
final class Causes {
  private static final double SMALL = 2.2;
  private static final int DARK = 60;
  private static final int GLARING = 250;
  private static final int SAMPLES = 24;

  /** Steepest step between neighbouring pixels, as a part of the contrast, of a sharp picture. */
  private static final double SHARP = 0.22;

  private Causes() {}

  static Unread.Cause of(GreyImage picture, Pose pose, CameraModel camera) {
    if (pose.narrowModule() < SMALL) {
      return Unread.Cause.TOO_SMALL;
    }
    Projection projection = new Projection(camera);
    projection.set(pose);
    int brightest = 0;
    int darkest = 255;
    int glaring = 0;
    int steepest = 0;
    for (int at = 0; at < SAMPLES * SAMPLES; at++) {
      double u = Pose.HALF * (2.0 * (at % SAMPLES) / (SAMPLES - 1) - 1);
      int row = at / SAMPLES;
      double v = Pose.HALF * (2.0 * row / (SAMPLES - 1) - 1);
      projection.project(u, v);
      int x = (int) Math.max(0, Math.min(picture.width() - 2.0, projection.x()));
      int y = (int) Math.max(0, Math.min(picture.height() - 2.0, projection.y()));
      int value = picture.at(x, y);
      brightest = Math.max(brightest, value);
      darkest = Math.min(darkest, value);
      glaring += value >= GLARING ? 1 : 0;
      steepest = Math.max(steepest, Math.abs(value - picture.at(x + 1, y)));
      steepest = Math.max(steepest, Math.abs(value - picture.at(x, y + 1)));
    }
    if (brightest < DARK) {
      return Unread.Cause.TOO_DARK;
    }
    if (glaring > SAMPLES * SAMPLES / 8 && darkest < GLARING / 2) {
      return Unread.Cause.GLARE;
    }
    return steepest < SHARP * (brightest - darkest) ? Unread.Cause.BLURRED : Unread.Cause.DIRTY;
  }
}
