package wherefrom.scan.camera;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Map;
import java.util.Optional;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacv.FFmpegFrameGrabber;
import org.bytedeco.javacv.Frame;
import org.bytedeco.javacv.FrameGrabber;
import org.jspecify.annotations.Nullable;
import wherefrom.job.image.CameraFrame;
import wherefrom.job.image.FrameSource;

/**
 * Frames through FFmpeg, of a device, a recorded clip or a generated picture alike. Each frame is
 * grabbed once, in colour; its grey values are made from that. Two buffers take turns: a frame is
 * valid until the next but one is asked for.
 */
final class FfmpegSource implements FrameSource {
  /**
   * Pictures in a row that may come broken before the source counts as gone: two seconds' worth.
   */
  static final int MOST_BROKEN = 60;

  private final CameraInput input;
  private final FFmpegFrameGrabber grabber;
  private final FrameBuffer[] buffers = {new FrameBuffer(), new FrameBuffer()};
  private int turn;

  FfmpegSource(CameraInput input, FFmpegFrameGrabber grabber) {
    this.input = input;
    this.grabber = grabber;
  }

  /**
   * Opens an input with the first set of its options that it takes.
   *
   * @throws IOException with a plain sentence when it takes none
   */
  static FfmpegSource open(CameraInput input) throws IOException {
    FrameGrabber.Exception last = null;
    for (Map<String, String> options : input.attempts()) {
      FFmpegFrameGrabber grabber = grabber(input, options);
      try {
        grabber.start();
        return new FfmpegSource(input, grabber);
      } catch (FrameGrabber.Exception refused) {
        release(grabber);
        last = refused;
      }
    }
    throw new IOException(CameraFault.ofOpening(input, last), last);
  }

  private static FFmpegFrameGrabber grabber(CameraInput input, Map<String, String> options) {
    FFmpegFrameGrabber grabber = new FFmpegFrameGrabber(input.source());
    if (!input.format().isEmpty()) {
      grabber.setFormat(input.format());
    }
    options.forEach(grabber::setOption);
    grabber.setPixelFormat(avutil.AV_PIX_FMT_BGRA);
    return grabber;
  }

  @Override
  public Optional<CameraFrame> next() throws IOException {
    FrameBuffer buffer = buffers[turn];
    turn = 1 - turn;
    return grabInto(buffer) ? Optional.of(buffer.frame()) : Optional.empty();
  }

  /**
   * Waits for the next frame and puts it into a buffer.
   *
   * @return false at the end of a clip
   * @throws IOException with a plain sentence when a device sends nothing more, or nothing whole
   */
  boolean grabInto(FrameBuffer buffer) throws IOException {
    Frame frame = whole();
    if (frame != null) {
      ByteBuffer picture = (ByteBuffer) frame.image[0];
      buffer.fill(picture, frame.imageWidth, frame.imageHeight, frame.imageStride);
    } else if (input.isDevice()) {
      throw new IOException(CameraFault.ofReading(input));
    }
    return frame != null;
  }

  /**
   * The next picture that is whole: one that comes broken, as from a loose plug, is passed over.
   */
  private @Nullable Frame whole() throws IOException {
    FrameGrabber.Exception last = null;
    for (int broken = 0; broken < MOST_BROKEN; broken++) {
      try {
        return grabber.grabImage();
      } catch (FrameGrabber.Exception one) {
        last = one;
      }
    }
    throw new IOException(CameraFault.ofReading(input), last);
  }

  @Override
  public void close() {
    release(grabber);
  }

  private static void release(FFmpegFrameGrabber grabber) {
    try {
      grabber.release();
    } catch (FrameGrabber.Exception alreadyGone) {
      // Nothing of it can be used any more, which is what closing is for.
    }
  }
}
