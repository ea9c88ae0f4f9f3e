package wherefrom.ui.controls;

import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import wherefrom.job.image.ColourImage;

/** Pictures of the job as pictures of the window; may be made on any thread. */
public final class Images {
  private static final int OPAQUE = 0xFF000000;

  private Images() {}

  public static WritableImage of(ColourImage picture) {
    int width = picture.width();
    int[] pixels = picture.pixels().clone();
    for (int at = 0; at < pixels.length; at++) {
      pixels[at] |= OPAQUE;
    }
    WritableImage image = new WritableImage(width, picture.height());
    image
        .getPixelWriter()
        .setPixels(
            0, 0, width, picture.height(), PixelFormat.getIntArgbInstance(), pixels, 0, width);
    return image;
  }
}
