package wherefrom.scan.grease;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.SplittableRandom;
import wherefrom.parts.TagCode;
import wherefrom.scan.picture.JpegFiles;

/** Photographs of a work bench as a phone writes them: JPEG in colour, with or without a tag. */
public final class PhotographFiles {
  /** As phones have it. */
  private static final float QUALITY = 0.85f;

  private static final int COMMENT = 0xFE;

  /** Of the picture's width, what symbol and frame take. */
  private static final double BLOCK = 0.16;

  private PhotographFiles() {}

  /**
   * A photograph.
   *
   * @param width in pixels; the height is three quarters of it
   * @param tag what lies in its midst
   */
  public static byte[] jpeg(int width, Optional<TagCode> tag, long seed) {
    int height = width * 3 / 4;
    SplittableRandom random = new SplittableRandom(seed);
    Plane frame = BenchTop.of(width, height, random);
    double focal = 0.85 * width;
    double[] place = {0.4, -0.3, focal / (BLOCK * width)};
    View view = new View(width, height, focal, View.rotation(0.2, 0.05, 1), place, 0, 0);
    tag.ifPresent(
        code -> Shot.place(frame, new Paper(LabelArt.of(code).plane(), Paper.full()), view));
    Shot.noise(frame, 2, random);
    try {
      return JpegFiles.of(inColour(Plane.toBuffered(frame.toGrey())), QUALITY);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static BufferedImage inColour(BufferedImage grey) {
    BufferedImage colour =
        new BufferedImage(grey.getWidth(), grey.getHeight(), BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D graphics = colour.createGraphics();
    graphics.drawImage(grey, 0, 0, null);
    graphics.dispose();
    return colour;
  }

  /** The same picture as another file: with a number in a comment. */
  public static byte[] numbered(byte[] jpeg, int number) {
    byte[] body = ByteBuffer.allocate(Integer.BYTES).putInt(number).array();
    return JpegFiles.withSegment(jpeg, COMMENT, body);
  }
}
