package wherefrom.pdf;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import wherefrom.job.pages.RecordPicture;
import wherefrom.pictures.ColourFile;

/** Pictures turned upright and made small enough for a document that is sent around. */
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
    // What fills the room was a large photograph; what is smaller stays as sharp as it is.
    return Math.max(image.getWidth(), image.getHeight()) < MOST
        ? Optional.of(LosslessFactory.createFromImage(document, image))
        : Optional.of(JPEGFactory.createFromImage(document, image, QUALITY));
  }

  private static Optional<BufferedImage> load(RecordPicture picture) {
    try {
      return Optional.of(ColourFile.read(picture.source()::open, MOST));
    } catch (IOException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }
}
