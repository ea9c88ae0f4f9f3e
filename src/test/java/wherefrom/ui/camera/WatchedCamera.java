package wherefrom.ui.camera;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import wherefrom.job.image.Camera;
import wherefrom.job.image.CameraFrame;
import wherefrom.job.image.Cameras;
import wherefrom.job.image.FrameSource;
import wherefrom.scan.camera.FfmpegCameras;
import wherefrom.scan.camera.TagPictures;

/**
 * One clip in a camera's place. After each frame it notes what stands on the screen, and what a
 * decoder from outside reads on the frame, before it gives the next one.
 */
final class WatchedCamera implements Cameras {

  /** One frame: what was on it, and what the window said once it had been dealt with. */
  record Noted(Optional<String> readable, String screen) {}

  private final Cameras through = new FfmpegCameras();
  private final Camera clip;
  private final Supplier<String> screen;
  private final List<Noted> noted = Collections.synchronizedList(new ArrayList<>());
  private final CountDownLatch ended = new CountDownLatch(1);
  private final CountDownLatch closed = new CountDownLatch(1);

  WatchedCamera(Camera clip, Supplier<String> screen) {
    this.clip = clip;
    this.screen = screen;
  }

  @Override
  public List<Camera> list() {
    return List.of(clip);
  }

  @Override
  public FrameSource open(Camera camera) throws IOException {
    FrameSource source = through.open(camera);
    return new FrameSource() {
      private Optional<String> readable = Optional.empty();
      private boolean begun;

      @Override
      public Optional<CameraFrame> next() throws IOException {
        if (begun) {
          note(new Noted(readable, screen.get()));
        }
        begun = true;
        Optional<CameraFrame> frame = source.next();
        readable = frame.flatMap(given -> TagPictures.read(given.grey()));
        if (frame.isEmpty()) {
          ended.countDown();
        }
        return frame;
      }

      @Override
      public void close() {
        source.close();
        closed.countDown();
      }
    };
  }

  /** Waits for the end of the clip and gives what was noted of every frame. */
  List<Noted> toItsEnd() throws InterruptedException {
    if (!ended.await(120, TimeUnit.SECONDS)) {
      throw new AssertionError("the clip has not ended");
    }
    return List.copyOf(noted);
  }

  /** Waits until so many frames were dealt with. */
  void frames(int count) throws InterruptedException {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    synchronized (noted) {
      while (noted.size() < count) {
        long left = TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime());
        if (left <= 0) {
          throw new AssertionError(noted.size() + " frames");
        }
        noted.wait(left);
      }
    }
  }

  private void note(Noted frame) {
    synchronized (noted) {
      noted.add(frame);
      noted.notifyAll();
    }
  }

  boolean isClosedWithin(int seconds) throws InterruptedException {
    return closed.await(seconds, TimeUnit.SECONDS);
  }

  List<Noted> noted() {
    return List.copyOf(noted);
  }
}
