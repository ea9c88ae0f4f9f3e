package wherefrom.ui.camera;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.Lock;
import java.util.function.Consumer;
import java.util.function.Supplier;
import wherefrom.job.image.Camera;
import wherefrom.job.image.CameraFrame;
import wherefrom.job.image.Cameras;
import wherefrom.job.image.FrameSource;
import wherefrom.job.reader.LiveAnswer;
import wherefrom.job.reader.LiveReader;

/** Frames of a camera with what was read on each, until it is stopped or the clip ends. */
final class CameraFeed {

  /** A frame to be shown, with its pixels copied: four bytes each, as the camera gave them. */
  static final class Shown {
    private final int width;
    private final int height;
    private final byte[] bgra;
    private final LiveAnswer answer;

    Shown(CameraFrame frame, LiveAnswer answer) {
      this.width = frame.grey().width();
      this.height = frame.grey().height();
      this.bgra = Arrays.copyOf(frame.bgra(), 4 * width * height);
      this.answer = answer;
    }

    int width() {
      return width;
    }

    int height() {
      return height;
    }

    /** Not a copy again. */
    byte[] bgra() {
      return bgra;
    }

    LiveAnswer answer() {
      return answer;
    }
  }

  static final String NO_CAMERA =
      "There is no camera here. Use a scanner, or type the tag's six digits.";

  /** A picture that stays on the glass then is not live. */
  static final String STOPPED = "The camera stopped.";

  private final Cameras cameras;
  private final Lock turn;
  private volatile boolean running = true;

  /**
   * @param turn held while the camera is open: few systems give one camera to two
   */
  CameraFeed(Cameras cameras, Lock turn) {
    this.cameras = cameras;
    this.turn = turn;
  }

  /** Ends the feed after the frame that is on its way. */
  void stop() {
    running = false;
  }

  /** The camera with this id, or the first where it is not here any more. */
  static Optional<Camera> choose(List<Camera> cameras, String id) {
    return cameras.stream()
        .filter(camera -> camera.id().equals(id))
        .findFirst()
        .or(() -> cameras.stream().findFirst());
  }

  /**
   * Runs until the end, away from the window's thread.
   *
   * @param follow gives what follows the frames, once the camera is ours
   * @param frames given each frame
   * @return a sentence on why it ended; empty when it was stopped
   * @throws IOException with a plain sentence when the camera does not open or stops answering
   */
  String run(String id, Supplier<LiveReader> follow, Consumer<Shown> frames) throws IOException {
    turn.lock();
    try {
      Optional<Camera> camera = running ? choose(cameras.list(), id) : Optional.empty();
      if (camera.isEmpty()) {
        return running ? NO_CAMERA : "";
      }
      LiveReader live = follow.get();
      try (FrameSource source = cameras.open(camera.get())) {
        return read(source, live, frames);
      }
    } finally {
      turn.unlock();
    }
  }

  private String read(FrameSource source, LiveReader live, Consumer<Shown> frames)
      throws IOException {
    while (running) {
      Optional<CameraFrame> frame = source.next();
      if (frame.isEmpty()) {
        return STOPPED;
      }
      LiveAnswer answer = live.accept(frame.get().grey());
      frames.accept(new Shown(frame.get(), answer));
    }
    return "";
  }
}
