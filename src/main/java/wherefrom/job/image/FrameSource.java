package wherefrom.job.image;

import java.io.IOException;
import java.util.Optional;

/** Frames from an opened camera or clip; used by one thread. */
public interface FrameSource extends AutoCloseable {
  /**
   * Waits for the next frame; empty at the end of a clip.
   *
   * @throws IOException with a plain sentence when the camera stops answering
   */
  Optional<CameraFrame> next() throws IOException;

  @Override
  void close();
}
