package wherefrom.pictures;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;

/** One row of a picture as 0xRRGGBB; what shines through is white paper. */
final class ColourRow {
  private static final int WHITE = 255;
  private static final int GREY = 0x010101;

  private ColourRow() {}

  static int[] of(BufferedImage picture, int row) {
    ColorModel model = picture.getColorModel();
    boolean grey =
        model instanceof ComponentColorModel
            && model.getColorSpace().getType() == ColorSpace.TYPE_GRAY
            && !model.hasAlpha();
    return grey ? ofGrey(picture, row) : ofColour(picture, row);
  }

  /** The samples themselves: Java takes its grey colour space for linear light. */
  private static int[] ofGrey(BufferedImage picture, int row) {
    int shift = picture.getColorModel().getComponentSize(0) - 8;
    int width = picture.getWidth();
    int[] samples = picture.getRaster().getSamples(0, row, width, 1, 0, (int[]) null);
    for (int column = 0; column < width; column++) {
      samples[column] = (samples[column] >> shift) * GREY;
    }
    return samples;
  }

  private static int[] ofColour(BufferedImage picture, int row) {
    int[] pixels = picture.getRGB(0, row, picture.getWidth(), 1, null, 0, picture.getWidth());
    for (int column = 0; column < pixels.length; column++) {
      int argb = pixels[column];
      int alpha = argb >>> 24;
      pixels[column] =
          onWhite(argb >> 16 & 0xFF, alpha) << 16
              | onWhite(argb >> 8 & 0xFF, alpha) << 8
              | onWhite(argb & 0xFF, alpha);
    }
    return pixels;
  }

  private static int onWhite(int sample, int alpha) {
    return (sample * alpha + WHITE * (WHITE - alpha)) / WHITE;
  }
}
