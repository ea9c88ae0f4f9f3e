package wherefrom.scan.grey;

import wherefrom.job.GreyImage;

/** The picture at one size; places are given in pixels of the whole picture. */
public final class Level {
  private final GreyImage image;
  private final int shrink;

  /**
   * @param shrink pixels of the whole picture along one pixel's side
   */
  public Level(GreyImage image, int shrink) {
    this.image = image;
    this.shrink = shrink;
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
    int width = image.width();
    double left = Math.max(0, Math.min(width - 1.001, x / shrink - 0.5));
    double top = Math.max(0, Math.min(image.height() - 1.001, y / shrink - 0.5));
    int column = (int) left;
    int row = (int) top;
    float fx = (float) (left - column);
    float fy = (float) (top - row);
    byte[] pixels = image.pixels();
    int at = row * width + column;
    int right = column + 1 < width ? 1 : 0;
    int below = row + 1 < image.height() ? width : 0;
    float upper = pixels[at] & 0xFF;
    upper += ((pixels[at + right] & 0xFF) - upper) * fx;
    float lower = pixels[at + below] & 0xFF;
    lower += ((pixels[at + below + right] & 0xFF) - lower) * fx;
    return upper + (lower - upper) * fy;
  }

  /** This level at half the size, each pixel the mean of four. */
  Level half() {
    int width = Math.max(1, image.width() / 2);
    int height = Math.max(1, image.height() / 2);
    int stride = image.width();
    byte[] from = image.pixels();
    byte[] to = new byte[width * height];
    int right = image.width() > 1 ? 1 : 0;
    int below = image.height() > 1 ? stride : 0;
    for (int row = 0; row < height; row++) {
      int at = 2 * row * stride;
      for (int column = 0; column < width; column++) {
        int sum =
            (from[at] & 0xFF)
                + (from[at + right] & 0xFF)
                + (from[at + below] & 0xFF)
                + (from[at + below + right] & 0xFF);
        to[row * width + column] = (byte) ((sum + 2) >> 2);
        at += 2;
      }
    }
    return new Level(new GreyImage(width, height, to), 2 * shrink);
  }
}
