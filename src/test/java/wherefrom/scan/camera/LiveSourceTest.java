package wherefrom.scan.camera;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import wherefrom.job.image.CameraFrame;

@Timeout(30)
class LiveSourceTest {
  private static final String SILENT = "The camera sends nothing.";
  private static final int PIXELS = 16;

  private static void fill(FrameBuffer buffer, int shade) {
    byte[] bgra = new byte[PIXELS * 4];
    Arrays.fill(bgra, (byte) shade);
    buffer.fill(ByteBuffer.wrap(bgra), 4, 4, 16);
  }

  private static int shade(CameraFrame frame) {
    return frame.bgra()[0] & 0xFF;
  }

  @Test
  void aSlowReaderGetsTheNewestFrame() throws Exception {
    CountDownLatch tenSent = new CountDownLatch(10);
    Semaphore more = new Semaphore(10);
    AtomicInteger sent = new AtomicInteger();
    LiveSource.Grab grab =
        buffer -> {
          more.acquireUninterruptibly();
          fill(buffer, sent.incrementAndGet());
          tenSent.countDown();
          return true;
        };
    try (LiveSource source = new LiveSource(grab, () -> {}, SILENT, 5000).start()) {
      assertThat(tenSent.await(5, TimeUnit.SECONDS)).isTrue();
      int newest = 0;
      while (newest < 10) {
        int next = shade(source.next().orElseThrow());
        assertThat(next).isGreaterThan(newest);
        newest = next;
      }
      more.release(100);
    }
  }

  @Test
  void framesInTheReadersHandsAreNeverOverwritten() throws Exception {
    AtomicInteger sent = new AtomicInteger();
    LiveSource.Grab grab =
        buffer -> {
          fill(buffer, sent.incrementAndGet() & 0xFF);
          return true;
        };
    SplittableRandom random = new SplittableRandom(7);
    try (LiveSource source = new LiveSource(grab, () -> {}, SILENT, 5000).start()) {
      CameraFrame before = source.next().orElseThrow();
      int shadeBefore = shade(before);
      for (int round = 0; round < 500; round++) {
        CameraFrame frame = source.next().orElseThrow();
        int shade = shade(frame);
        for (int spin = random.nextInt(2000); spin > 0; spin--) {
          Thread.onSpinWait();
        }
        assertThat(before.bgra()).containsOnly(shadeBefore);
        assertThat(frame.bgra()).containsOnly(shade);
        before = frame;
        shadeBefore = shade;
      }
    }
  }

  @Test
  void anUnpluggedCameraGivesItsSentenceAndIsReleased() {
    CountDownLatch released = new CountDownLatch(1);
    LiveSource.Grab grab =
        buffer -> {
          throw new IOException("Camera \"Bench camera\" sends nothing more.");
        };
    LiveSource source = new LiveSource(grab, released::countDown, SILENT, 5000).start();
    assertThatThrownBy(source::next)
        .isInstanceOf(IOException.class)
        .hasMessage("Camera \"Bench camera\" sends nothing more.");
    source.close();
    assertThat(released.getCount()).isZero();
  }

  @Test
  void aCameraThatHangsGivesASentenceAndCanBeClosed() {
    CountDownLatch never = new CountDownLatch(1);
    LiveSource.Grab grab =
        buffer -> {
          try {
            never.await();
          } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
          }
          return false;
        };
    LiveSource source = new LiveSource(grab, () -> {}, SILENT, 50).start();
    assertThatThrownBy(source::next).isInstanceOf(IOException.class).hasMessage(SILENT);
    source.close();
    never.countDown();
  }

  @Test
  void theEndOfAStreamIsTheEnd() throws IOException {
    try (LiveSource source = new LiveSource(buffer -> false, () -> {}, SILENT, 5000).start()) {
      assertThat(source.next()).isEmpty();
      assertThat(source.next()).isEmpty();
    }
  }
}
