package wherefrom.ui.photos;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import wherefrom.job.image.Camera;
import wherefrom.job.image.CameraFrame;
import wherefrom.job.image.Cameras;
import wherefrom.job.image.FrameSource;

/** One still picture from a camera. */
public final class Still {
  /** The first frames of many cameras are dark: they have yet to find their exposure. */
  private static final int SETTLING = 15;

  private Still() {}

  /**
   * Takes a picture into a PNG file.
   *
   * @throws IOException with a plain sentence when the camera gives none
   */
  public static void take(Cameras cameras, Camera camera, Path file) throws IOException {
    Optional<CameraFrame> last = Optional.empty();
    try (FrameSource source = cameras.open(camera)) {
      for (int at = 0; at < SETTLING; at++) {
        Optional<CameraFrame> next = source.next();
        if (next.isEmpty()) {
          break;
        }
        last = next;
      }
    }
    if (last.isEmpty()) {
      throw new IOException(camera.title() + " gives no picture. Check its cable and try again.");
    }
    PngFile.write(last.get(), file);
  }
}
