package wherefrom.scan.grey;

import wherefrom.job.image.GreyImage;

/** The picture at one size; places are given in pixels of the whole picture. */
public final class Level {
  private final GreyImage image;
  private final int shrink;
  private final byte[] pixels;
  private final int width;
  private final int right;
  private final int below;
  private final double perPixel;
  private final double lastColumn;
  private final double lastRow;

  /**
   * @param shrink pixels of the whole picture along one pixel's side
   */
  public Level(GreyImage image, int shrink) {
    this.image = image;
    this.shrink = shrink;
    pixels = image.pixels();
    width = image.width();
    right = width > 1 ? 1 : 0;
    below = image.height() > 1 ? width : 0;
    perPixel = 1.0 / shrink;
    lastColumn = Math.max(0, width - 1.001);
    lastRow = Math.max(0, image.height() - 1.001);
  }

  public int width() {
    return image.width();
  }

  public int height() {
    return image.height();
  }

  public int shrink() {
    return shrink;
  }

  /** The pixels, row by row; not a copy. */
  public byte[] pixels() {
    return image.pixels();
  }

  /** Grey value at a place, between pixel centres by bilinear interpolation; edges go on. */
  public float at(double x, double y) {
    double left = inside(x * perPixel - 0.5, lastColumn);
    double top = inside(y * perPixel - 0.5, lastRow);
    int column = (int) left;
    int row = (int) top;
    float fx = (float) (left - column);
    float fy = (float) (top - row);
    int at = row * width + column;
    float upper = pixels[at] & 0xFF;
    upper += ((pixels[at + right] & 0xFF) - upper) * fx;
    float lower = pixels[at + below] & 0xFF;
    lower += ((pixels[at + below + right] & 0xFF) - lower) * fx;
    return upper + (lower - upper) * fy;
  }

  /** {@link #at} for many places, from the first on. */
  public void at(double[] xs, double[] ys, int first, float[] values) {
    byte[] from = pixels;
    double scale = perPixel;
    int next = right;
    int under = below;
    for (int place = first; place < xs.length; place++) {
      double left = inside(xs[place] * scale - 0.5, lastColumn);
      double top = inside(ys[place] * scale - 0.5, lastRow);
      int column = (int) left;
      int row = (int) top;
      float fx = (float) (left - column);
      float fy = (float) (top - row);
      int at = row * width + column;
      float upper = from[at] & 0xFF;
      upper += ((from[at + next] & 0xFF) - upper) * fx;
      float lower = from[at + under] & 0xFF;
      lower += ((from[at + under + next] & 0xFF) - lower) * fx;
      values[place] = upper + (lower - upper) * fy;
    }
  }

  /** As {@link #at}, with the slopes in grey values for each pixel of the whole picture. */
  public void at(double x, double y, float[] valueAndSlopes) {
    double left = inside(x * perPixel - 0.5, lastColumn);
    double top = inside(y * perPixel - 0.5, lastRow);
    int column = (int) left;
    int row = (int) top;
    float fx = (float) (left - column);
    float fy = (float) (top - row);
    int at = row * width + column;
    float one = pixels[at] & 0xFF;
    float two = pixels[at + right] & 0xFF;
    float three = pixels[at + below] & 0xFF;
    float four = pixels[at + below + right] & 0xFF;
    float upper = one + (two - one) * fx;
    float lower = three + (four - three) * fx;
    valueAndSlopes[0] = upper + (lower - upper) * fy;
    valueAndSlopes[1] = (float) (((two - one) * (1 - fy) + (four - three) * fy) * perPixel);
    valueAndSlopes[2] = (float) ((lower - upper) * perPixel);
  }

  private static double inside(double place, double last) {
    return place > 0 ? (place < last ? place : last) : 0;
  }

  /** This level at half the size, each pixel the mean of four. */
  Level half() {
    int halfWidth = Math.max(1, width / 2);
    int halfHeight = Math.max(1, image.height() / 2);
    byte[] to = new byte[halfWidth * halfHeight];
    for (int row = 0; row < halfHeight; row++) {
      int at = 2 * row * width;
      for (int column = 0; column < halfWidth; column++) {
        int sum =
            (pixels[at] & 0xFF)
                + (pixels[at + right] & 0xFF)
                + (pixels[at + below] & 0xFF)
                + (pixels[at + below + right] & 0xFF);
        to[row * halfWidth + column] = (byte) ((sum + 2) >> 2);
        at += 2;
      }
    }
    return new Level(new GreyImage(halfWidth, halfHeight, to), 2 * shrink);
  }
}
