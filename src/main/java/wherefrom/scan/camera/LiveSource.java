package wherefrom.scan.camera;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;
import wherefrom.job.image.CameraFrame;
import wherefrom.job.image.FrameSource;

/**
 * Gives the newest frame of a device. A device queues its frames; whoever reads them slower than
 * they come would see what was in view a second ago. A thread of its own takes every frame and
 * keeps the last. A frame is valid until the next but one is asked for.
 */
final class LiveSource implements FrameSource {
  /** A device that sends no frame for this long has stopped. */
  static final int SILENCE_MS = 5000;

  /** How long closing waits for a device that hangs; its thread may end later. */
  private static final int CLOSING_MS = 1000;

  /** Besides the one being filled: the newest, and two in the reader's hands. */
  private static final int SPARE_BUFFERS = 3;

  /** What the frames come from; used by the thread alone. */
  interface Grab {
    /** Fills a buffer with the next frame; false at the end. */
    boolean into(FrameBuffer buffer) throws IOException;
  }

  private final Grab grab;
  private final Runnable release;
  private final String silent;
  private final int silenceMs;
  private final ReentrantLock lock = new ReentrantLock();
  private final Condition changed = lock.newCondition();
  private final Deque<FrameBuffer> free = new ArrayDeque<>();
  private final Deque<FrameBuffer> handedOut = new ArrayDeque<>();
  private final Thread thread = new Thread(this::run, "camera");
  private FrameBuffer filling = new FrameBuffer();
  private @Nullable FrameBuffer newest;
  private @Nullable IOException fault;
  private boolean ended;
  private volatile boolean closed;

  /**
   * @param release run by the thread when it is done with the device
   * @param silent the sentence for a device that sends nothing for {@code silenceMs}
   */
  LiveSource(Grab grab, Runnable release, String silent, int silenceMs) {
    this.grab = grab;
    this.release = release;
    this.silent = silent;
    this.silenceMs = silenceMs;
    for (int count = 0; count < SPARE_BUFFERS; count++) {
      free.add(new FrameBuffer());
    }
    thread.setDaemon(true);
  }

  static LiveSource start(FfmpegSource source, CameraInput input) {
    return new LiveSource(source::grabInto, source::close, CameraFault.ofReading(input), SILENCE_MS)
        .start();
  }

  LiveSource start() {
    thread.start();
    return this;
  }

  private void run() {
    IOException broken = null;
    try {
      while (!closed && grab.into(filling)) {
        publish();
      }
    } catch (IOException stopped) {
      broken = stopped;
    } finally {
      end(broken);
      release.run();
    }
  }

  private void publish() {
    lock.lock();
    try {
      FrameBuffer missed = newest;
      if (missed != null) {
        free.add(missed);
      }
      newest = filling;
      filling = free.remove();
      changed.signalAll();
    } finally {
      lock.unlock();
    }
  }

  private void end(@Nullable IOException broken) {
    lock.lock();
    try {
      fault = broken;
      ended = true;
      changed.signalAll();
    } finally {
      lock.unlock();
    }
  }

  @Override
  public Optional<CameraFrame> next() throws IOException {
    lock.lock();
    try {
      awaitChange();
      FrameBuffer frame = newest;
      if (frame != null) {
        return Optional.of(handOut(frame));
      }
      if (fault != null) {
        throw fault;
      }
      return Optional.empty();
    } finally {
      lock.unlock();
    }
  }

  private CameraFrame handOut(FrameBuffer frame) {
    newest = null;
    handedOut.add(frame);
    if (handedOut.size() == SPARE_BUFFERS) {
      free.add(handedOut.remove());
    }
    return frame.frame();
  }

  private void awaitChange() throws IOException {
    long left = TimeUnit.MILLISECONDS.toNanos(silenceMs);
    try {
      while (newest == null && !ended) {
        if (left <= 0) {
          throw new IOException(silent);
        }
        left = changed.awaitNanos(left);
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("The camera was closed while it was being read.");
    }
  }

  @Override
  public void close() {
    closed = true;
    try {
      thread.join(CLOSING_MS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
