package wherefrom.scan.picture;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.Raster;

/** The grey values of a picture, row by row; what shines through is white paper. */
final class GreyRows {
  private static final int WHITE = 255;

  private GreyRows() {}

  static void copy(BufferedImage picture, UprightPixels to) {
    ColorModel model = picture.getColorModel();
    boolean grey =
        model instanceof ComponentColorModel
            && model.getColorSpace().getType() == ColorSpace.TYPE_GRAY;
    for (int row = 0; row < to.height(); row++) {
      to.put(row, grey ? ofGrey(picture, row) : ofColour(picture, row));
    }
  }

  /**
   * The samples themselves: Java would convert them, taking Java's grey colour space for linear
   * light, and make every middle grey brighter than the same grey in colour.
   */
  private static int[] ofGrey(BufferedImage picture, int row) {
    Raster raster = picture.getRaster();
    int width = picture.getWidth();
    int shift = picture.getColorModel().getComponentSize(0) - 8;
    int[] grey = raster.getSamples(0, row, width, 1, 0, (int[]) null);
    int[] alpha =
        picture.getColorModel().hasAlpha()
            ? raster.getSamples(0, row, width, 1, 1, (int[]) null)
            : null;
    for (int column = 0; column < width; column++) {
      grey[column] >>= shift;
      if (alpha != null) {
        grey[column] = onWhite(grey[column], alpha[column] >> shift);
      }
    }
    return grey;
  }

  private static int[] ofColour(BufferedImage picture, int row) {
    int[] pixels = picture.getRGB(0, row, picture.getWidth(), 1, null, 0, picture.getWidth());
    for (int column = 0; column < pixels.length; column++) {
      int argb = pixels[column];
      pixels[column] =
          onWhite(luminance(argb >> 16 & 0xFF, argb >> 8 & 0xFF, argb & 0xFF), argb >>> 24);
    }
    return pixels;
  }

  private static int onWhite(int grey, int alpha) {
    return (grey * alpha + WHITE * (WHITE - alpha)) / WHITE;
  }

  /** ITU-R BT.601, as in JPEG files (JFIF): 0.299, 0.587 and 0.114, in 1/65536. */
  static int luminance(int red, int green, int blue) {
    return (19595 * red + 38470 * green + 7471 * blue + 32768) >> 16;
  }

  /**
   * The rows of a JPEG file for four-colour print, which Java gives raw only.
   *
   * @param ink how its samples are meant
   */
  static void copyInk(Raster raster, InkSamples ink, UprightPixels to) {
    int width = to.width();
    int[] samples = new int[width * InkSamples.BANDS];
    int[] grey = new int[width];
    for (int row = 0; row < to.height(); row++) {
      raster.getPixels(0, row, width, 1, samples);
      for (int column = 0; column < width; column++) {
        grey[column] = ink.grey(samples, column * InkSamples.BANDS);
      }
      to.put(row, grey);
    }
  }
}
