package wherefrom.ui.camera;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReentrantLock;
import org.junit.jupiter.api.Test;
import wherefrom.job.image.Camera;
import wherefrom.job.image.CameraFrame;
import wherefrom.job.image.Cameras;
import wherefrom.job.image.FrameSource;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.LiveAnswer;
import wherefrom.job.reader.LiveReader;

/** The camera's frames on their way to the window. */
class CameraFeedTest {
  private static final Camera OVER_BENCH = new Camera("a", "Over the bench");
  private static final Camera BUILT_IN = new Camera("b", "Built in");

  private final List<String> opened = new ArrayList<>();
  private boolean closed;
  private int left = 4;

  private Cameras cameras(Camera... here) {
    return new Cameras() {
      @Override
      public List<Camera> list() {
        return List.of(here);
      }

      @Override
      public FrameSource open(Camera camera) {
        opened.add(camera.id());
        return source();
      }
    };
  }

  private FrameSource source() {
    return new FrameSource() {
      // Like a real source, it writes every frame into the same buffer.
      private final byte[] bgra = new byte[4 * 6];

      @Override
      public Optional<CameraFrame> next() {
        bgra[0] = (byte) left;
        CameraFrame frame = new CameraFrame(new GreyImage(3, 2, new byte[6]), bgra);
        return left-- > 0 ? Optional.of(frame) : Optional.empty();
      }

      @Override
      public void close() {
        closed = true;
      }
    };
  }

  private static LiveReader blind() {
    return frame -> new LiveAnswer.Nothing(Optional.empty());
  }

  private final Lock turn = new ReentrantLock();

  @Test
  void saysKindlyThatThereIsNoCamera() throws IOException {
    String said = new CameraFeed(cameras(), turn).run("a", CameraFeedTest::blind, frame -> {});
    assertThat(said).contains("no camera here").contains("six digits");
  }

  @Test
  void everyFrameKeepsItsOwnPixels() throws IOException {
    List<CameraFeed.Shown> frames = new ArrayList<>();
    String said =
        new CameraFeed(cameras(OVER_BENCH), turn).run("a", CameraFeedTest::blind, frames::add);
    assertThat(frames)
        .extracting(frame -> frame.bgra()[0])
        .containsExactly((byte) 4, (byte) 3, (byte) 2, (byte) 1);
    assertThat(said).contains("stopped");
    assertThat(closed).isTrue();
  }

  @Test
  void takesTheChosenCameraAndTheFirstWhereThatIsGone() throws IOException {
    new CameraFeed(cameras(OVER_BENCH, BUILT_IN), turn)
        .run("b", CameraFeedTest::blind, frame -> {});
    new CameraFeed(cameras(OVER_BENCH, BUILT_IN), turn)
        .run("gone", CameraFeedTest::blind, frame -> {});
    assertThat(opened).containsExactly("b", "a");
  }

  @Test
  void stopsAfterTheFrameOnItsWayAndLetsTheCameraGo() throws IOException {
    CameraFeed feed = new CameraFeed(cameras(OVER_BENCH), turn);
    List<CameraFeed.Shown> frames = new ArrayList<>();
    String said =
        feed.run(
            "a",
            CameraFeedTest::blind,
            frame -> {
              frames.add(frame);
              feed.stop();
            });
    assertThat(frames).hasSize(1);
    assertThat(said).isEmpty();
    assertThat(closed).isTrue();
  }

  @Test
  void aCameraThatDoesNotOpenSaysWhy() {
    Cameras busy =
        new Cameras() {
          @Override
          public List<Camera> list() {
            return List.of(OVER_BENCH);
          }

          @Override
          public FrameSource open(Camera camera) throws IOException {
            throw new IOException("Another program uses the camera. Close it and try again.");
          }
        };
    assertThatThrownBy(
            () -> new CameraFeed(busy, turn).run("a", CameraFeedTest::blind, frame -> {}))
        .hasMessageContaining("Another program");
  }
}
