package wherefrom.ui.sample;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import wherefrom.job.image.CameraFrame;
import wherefrom.job.image.FrameSource;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Corner;
import wherefrom.job.reader.Sighting;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.scan.camera.TagPictures;

/**
 * A camera over a bench with one tag on it: a few frames, then the picture ends or stands still.
 */
public final class StandingPicture implements FrameSource {
  private static final int WIDE = 640;
  private static final int HIGH = 360;
  private static final int FRAMES = 40;
  private static final TagCode TAG = new TagCode(TagType.PART, SampleJob.ENGINE, 20, 1);

  /** Where the tag is on the picture. */
  static final Sighting SIGHTING =
      new Sighting(
          TAG.digits(),
          Sighting.Basis.ISSUED,
          List.of(
              new Corner(278, 138),
              new Corner(362, 138),
              new Corner(362, 222),
              new Corner(278, 222)));

  private static final byte[] PICTURE = picture();
  private static CountDownLatch still = new CountDownLatch(0);

  private int left = FRAMES;

  /** Runs the camera until its picture stands still; it stays open then. */
  public static Executor untilItStands() {
    return work -> {
      still = new CountDownLatch(1);
      CountDownLatch stands = still;
      Thread thread = new Thread(work, "standing picture");
      thread.setDaemon(true);
      thread.start();
      await(stands);
    };
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public Optional<CameraFrame> next() {
    if (left-- > 0) {
      return Optional.of(
          new CameraFrame(new GreyImage(WIDE, HIGH, new byte[WIDE * HIGH]), PICTURE));
    }
    if (still.getCount() > 0) {
      still.countDown();
      await(new CountDownLatch(1));
    }
    return Optional.empty();
  }

  @Override
  public void close() {}

  private static byte[] picture() {
    BufferedImage drawn = TagPictures.of(TAG, WIDE, HIGH, 0);
    byte[] bgra = new byte[4 * WIDE * HIGH];
    for (int at = 0; at < WIDE * HIGH; at++) {
      int rgb = drawn.getRGB(at % WIDE, at / WIDE);
      bgra[4 * at] = (byte) rgb;
      bgra[4 * at + 1] = (byte) (rgb >> 8);
      bgra[4 * at + 2] = (byte) (rgb >> 16);
      bgra[4 * at + 3] = (byte) 255;
    }
    return bgra;
  }
}
