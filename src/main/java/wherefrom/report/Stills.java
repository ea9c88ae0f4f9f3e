package wherefrom.report;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import wherefrom.job.RecordPicture;

/** Pictures made small enough for a document that is sent around. */
final class Stills {
  /** Half an A4 page's width at 300 dots per inch. */
  private static final int MOST = 1100;

  private static final float QUALITY = 0.85f;

  private Stills() {}

  /** The picture; empty where its file is missing or holds no picture: the record goes on. */
  static Optional<PDImageXObject> read(PDDocument document, RecordPicture picture)
      throws IOException {
    Optional<BufferedImage> read = load(picture);
    if (read.isEmpty()) {
      return Optional.empty();
    }
    BufferedImage image = read.get();
    int longest = Math.max(image.getWidth(), image.getHeight());
    return longest <= MOST
        ? Optional.of(LosslessFactory.createFromImage(document, image))
        : Optional.of(
            JPEGFactory.createFromImage(
                document, smaller(image, (double) MOST / longest), QUALITY));
  }

  private static Optional<BufferedImage> load(RecordPicture picture) {
    try (InputStream in = picture.source().open()) {
      return Optional.ofNullable(ImageIO.read(in));
    } catch (IOException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static BufferedImage smaller(BufferedImage image, double factor) {
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
