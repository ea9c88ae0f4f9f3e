package wherefrom.job.image;

import java.io.IOException;
import java.util.List;

/** The cameras of this machine. */
public interface Cameras {
  /** The cameras that can be chosen; empty where there is none or the camera library is missing. */
  List<Camera> list();

  /**
   * Opens a camera.
   *
   * @throws IOException with a plain sentence that says what to do, when it cannot be opened
   */
  FrameSource open(Camera camera) throws IOException;
}
