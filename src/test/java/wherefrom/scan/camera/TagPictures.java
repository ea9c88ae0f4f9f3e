package wherefrom.scan.camera;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.NotFoundException;
import com.google.zxing.PlanarYUVLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.Optional;
import wherefrom.job.image.GreyImage;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagSymbol;

/** Pictures of a bench with a tag on it, and a decoder from outside to read them. */
public final class TagPictures {
  private static final int QUIET = 4;

  private TagPictures() {}

  /** A grey bench with a tag in the middle, a third of the height, turned. */
  public static BufferedImage of(TagCode tag, int width, int height, double degrees) {
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = picture.createGraphics();
    graphics.setColor(new Color(120, 110, 95));
    graphics.fillRect(0, 0, width, height);
    BufferedImage label = label(tag, Math.max(1, height / 3 / (TagSymbol.SIZE + 2 * QUIET)));
    AffineTransform turned =
        AffineTransform.getRotateInstance(Math.toRadians(degrees), width / 2.0, height / 2.0);
    turned.translate((width - label.getWidth()) / 2.0, (height - label.getHeight()) / 2.0);
    graphics.drawImage(label, turned, null);
    graphics.dispose();
    return picture;
  }

  /** A tag's symbol with its quiet zone. */
  public static BufferedImage label(TagCode tag, int pixelsPerModule) {
    TagSymbol symbol = TagSymbol.of(tag);
    int size = (TagSymbol.SIZE + 2 * QUIET) * pixelsPerModule;
    BufferedImage label = new BufferedImage(size, size, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = label.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, size, size);
    graphics.setColor(Color.BLACK);
    for (int row = 0; row < TagSymbol.SIZE; row++) {
      for (int column = 0; column < TagSymbol.SIZE; column++) {
        if (symbol.dark(row, column)) {
          graphics.fillRect(
              (column + QUIET) * pixelsPerModule,
              (row + QUIET) * pixelsPerModule,
              pixelsPerModule,
              pixelsPerModule);
        }
      }
    }
    graphics.dispose();
    return label;
  }

  /** What ZXing reads on a picture. */
  public static Optional<String> read(GreyImage picture) {
    PlanarYUVLuminanceSource source =
        new PlanarYUVLuminanceSource(
            picture.pixels(),
            picture.width(),
            picture.height(),
            0,
            0,
            picture.width(),
            picture.height(),
            false);
    try {
      BinaryBitmap bitmap = new BinaryBitmap(new HybridBinarizer(source));
      return Optional.of(new QRCodeReader().decode(bitmap).getText());
    } catch (NotFoundException none) {
      return Optional.empty();
    } catch (ReaderException unreadable) {
      return Optional.empty();
    }
  }
}
