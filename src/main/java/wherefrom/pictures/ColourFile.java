package wherefrom.pictures;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/** A PNG or JPEG file decoded in colour, upright and no larger than wanted. */
public final class ColourFile {
  /** A picture is decoded at up to this many times the wanted size, then made smaller smoothly. */
  private static final int FINER = 2;

  private ColourFile() {}

  /** Opens the file; asked twice. */
  @FunctionalInterface
  public interface Opening {
    /**
     * The file from its first byte on.
     *
     * @throws IOException when it cannot be read
     */
    InputStream open() throws IOException;
  }

  /**
   * Decodes a picture; only every second, third… pixel of a large one is ever held.
   *
   * @param longest what its longer side may have at most, in pixels
   * @return without transparency, on white
   * @throws IOException when the file cannot be read or holds no picture
   */
  public static BufferedImage read(Opening file, int longest) throws IOException {
    PictureGate.pass(file);
    BufferedImage stored;
    try (InputStream in = file.open()) {
      stored = decode(in, longest);
    } catch (RuntimeException | OutOfMemoryError damaged) {
      throw new IOException("the picture is damaged", damaged);
    }
    ExifOrientation orientation;
    try (InputStream in = new BufferedInputStream(file.open())) {
      orientation = ExifOrientation.of(in);
    }
    return smaller(upright(stored, orientation), longest);
  }

  private static BufferedImage decode(InputStream in, int longest) throws IOException {
    try (ImageInputStream stream = ImageIO.createImageInputStream(in)) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
      if (!readers.hasNext()) {
        throw new IOException("it holds no picture");
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(stream, true, true);
        PictureGate.requireSize(reader.getWidth(0), reader.getHeight(0));
        int most = Math.max(reader.getWidth(0), reader.getHeight(0));
        int step = (most + FINER * longest - 1) / (FINER * longest);
        ImageReadParam param = reader.getDefaultReadParam();
        param.setSourceSubsampling(step, step, 0, 0);
        return reader.read(0, param);
      } finally {
        reader.dispose();
      }
    }
  }

  private static BufferedImage upright(BufferedImage stored, ExifOrientation orientation) {
    int width = stored.getWidth();
    int height = stored.getHeight();
    int[] turned = new int[width * height];
    int step = orientation.step(height);
    for (int row = 0; row < height; row++) {
      int[] colours = ColourRow.of(stored, row);
      int at = orientation.start(row, width, height);
      for (int column = 0; column < width; column++) {
        turned[at] = colours[column];
        at += step;
      }
    }
    int across = orientation.uprightWidth(width, height);
    int down = orientation.uprightHeight(width, height);
    BufferedImage upright = new BufferedImage(across, down, BufferedImage.TYPE_INT_RGB);
    upright.setRGB(0, 0, across, down, turned, 0, across);
    return upright;
  }

  private static BufferedImage smaller(BufferedImage image, int longest) {
    int most = Math.max(image.getWidth(), image.getHeight());
    if (most <= longest) {
      return image;
    }
    double factor = (double) longest / most;
    int width = Math.max(1, (int) Math.round(image.getWidth() * factor));
    int height = Math.max(1, (int) Math.round(image.getHeight() * factor));
    BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = small.createGraphics();
    graphics.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    graphics.drawImage(image, 0, 0, width, height, null);
    graphics.dispose();
    return small;
  }
}
