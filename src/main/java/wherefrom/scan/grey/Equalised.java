package wherefrom.scan.grey;

import wherefrom.job.image.GreyImage;

/**
 * Pictures prepared for a second look: contrast evened out tile by tile and limited (K. Zuiderveld,
 * Contrast Limited Adaptive Histogram Equalization, Graphics Gems IV, 1994), or a little blurred.
 */
public final class Equalised {
  /** Tiles along the picture's longer side. */
  private static final int TILES = 16;

  /** How many times the mean a grey value may count: limits how steep contrast becomes. */
  private static final double LIMIT = 3;

  private static final int GREYS = 256;

  private final GreyImage picture;
  private final int side;
  private final int across;
  private final int along;
  private final float[][] curves;

  private Equalised(GreyImage picture) {
    this.picture = picture;
    side = Math.max(16, (Math.max(picture.width(), picture.height()) + TILES - 1) / TILES);
    across = (picture.width() + side - 1) / side;
    along = (picture.height() + side - 1) / side;
    curves = new float[across * along][];
    for (int tile = 0; tile < curves.length; tile++) {
      curves[tile] = curve(tile % across * side, tile / across * side);
    }
  }

  /** Contrast evened out. */
  public static GreyImage of(GreyImage picture) {
    return new Equalised(picture).made();
  }

  /** Each pixel with its eight neighbors, one, two, one across and down. */
  public static GreyImage softened(GreyImage picture) {
    int width = picture.width();
    int height = picture.height();
    byte[] from = picture.pixels();
    byte[] to = from.clone();
    for (int y = 1; y < height - 1; y++) {
      for (int at = y * width + 1; at < (y + 1) * width - 1; at++) {
        int sum =
            column(from, at - 1, width) + 2 * column(from, at, width) + column(from, at + 1, width);
        to[at] = (byte) ((sum + 8) >> 4);
      }
    }
    return new GreyImage(width, height, to);
  }

  private static int column(byte[] pixels, int at, int width) {
    return (pixels[at - width] & 0xFF) + 2 * (pixels[at] & 0xFF) + (pixels[at + width] & 0xFF);
  }

  /** Where each grey value of a tile goes. */
  private float[] curve(int left, int top) {
    int right = Math.min(picture.width(), left + side);
    int bottom = Math.min(picture.height(), top + side);
    double[] counts = new double[GREYS];
    for (int y = top; y < bottom; y++) {
      for (int x = left; x < right; x++) {
        counts[picture.at(x, y)]++;
      }
    }
    double most = LIMIT * (right - left) * (bottom - top) / GREYS;
    double spare = 0;
    for (int grey = 0; grey < GREYS; grey++) {
      spare += Math.max(0, counts[grey] - most);
      counts[grey] = Math.min(most, counts[grey]);
    }
    float[] curve = new float[GREYS];
    double sum = 0;
    for (int grey = 0; grey < GREYS; grey++) {
      sum += counts[grey] + spare / GREYS;
      curve[grey] = (float) (255 * sum / ((right - left) * (bottom - top)));
    }
    return curve;
  }

  private GreyImage made() {
    byte[] pixels = new byte[picture.width() * picture.height()];
    for (int y = 0; y < picture.height(); y++) {
      float down = within((y + 0.5f) / side - 0.5f, along);
      int row = Math.min((int) down, Math.max(0, along - 2));
      for (int x = 0; x < picture.width(); x++) {
        float right = within((x + 0.5f) / side - 0.5f, across);
        int column = Math.min((int) right, Math.max(0, across - 2));
        int grey = picture.at(x, y);
        float upper = mix(row, column, right - column, grey);
        float lower = mix(Math.min(along - 1, row + 1), column, right - column, grey);
        pixels[y * picture.width() + x] = (byte) Math.round(upper + (lower - upper) * (down - row));
      }
    }
    return new GreyImage(picture.width(), picture.height(), pixels);
  }

  private static float within(float place, int count) {
    return Math.max(0, Math.min(count - 1, place));
  }

  private float mix(int row, int column, float part, int grey) {
    float one = curves[row * across + column][grey];
    float other = curves[row * across + Math.min(across - 1, column + 1)][grey];
    return one + (other - one) * part;
  }
}
