package wherefrom.scan.camera;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.List;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacv.FFmpegFrameRecorder;
import org.bytedeco.javacv.Frame;
import org.bytedeco.javacv.FrameRecorder;

/** Writes clips for tests: {@code .avi} as Motion JPEG, {@code .mp4} as MPEG-4. */
public final class ClipMaker {
  private static final int FRAMES_PER_SECOND = 30;

  /** Quantiser scale of both codecs: 2 is close to the best, 31 the worst. */
  private static final String FINE = "2";

  private ClipMaker() {}

  /**
   * Writes a clip of pictures of one size, with even width and height.
   *
   * @return the file
   */
  public static Path write(Path file, List<BufferedImage> pictures) {
    FfmpegLibrary.load();
    BufferedImage first = pictures.get(0);
    try (FFmpegFrameRecorder recorder =
        new FFmpegFrameRecorder(file.toFile(), first.getWidth(), first.getHeight())) {
      boolean jpeg = file.toString().endsWith(".avi");
      recorder.setVideoCodec(jpeg ? avcodec.AV_CODEC_ID_MJPEG : avcodec.AV_CODEC_ID_MPEG4);
      recorder.setPixelFormat(jpeg ? avutil.AV_PIX_FMT_YUVJ420P : avutil.AV_PIX_FMT_YUV420P);
      recorder.setFrameRate(FRAMES_PER_SECOND);
      recorder.setVideoOption("qmin", FINE);
      recorder.setVideoOption("qmax", FINE);
      recorder.setVideoBitrate(0);
      recorder.start();
      for (BufferedImage picture : pictures) {
        recorder.record(frame(picture));
      }
      return file;
    } catch (FrameRecorder.Exception failed) {
      throw new IllegalStateException("cannot write " + file, failed);
    }
  }

  private static Frame frame(BufferedImage picture) {
    int width = picture.getWidth();
    int height = picture.getHeight();
    BufferedImage plain = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D graphics = plain.createGraphics();
    graphics.drawImage(picture, 0, 0, null);
    graphics.dispose();
    Frame frame = new Frame(width, height, Frame.DEPTH_UBYTE, 3);
    byte[] bytes = ((DataBufferByte) plain.getRaster().getDataBuffer()).getData();
    ByteBuffer to = (ByteBuffer) frame.image[0];
    for (int row = 0; row < height; row++) {
      to.put(row * frame.imageStride, bytes, row * width * 3, width * 3);
    }
    return frame;
  }
}
