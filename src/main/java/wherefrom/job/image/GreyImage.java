package wherefrom.job.image;

/**
 * A picture in grey values, row by row from the top left, 0 black to 255 white. The pixels are not
 * copied: whoever makes the image must leave them alone while it is read.
 */
public final class GreyImage {
  private final int width;
  private final int height;
  private final byte[] pixels;

  /**
   * @param pixels at least {@code width * height} values
   */
  public GreyImage(int width, int height, byte[] pixels) {
    if (width < 1 || height < 1 || pixels.length < (long) width * height) {
      throw new IllegalArgumentException(
          width + " x " + height + " with " + pixels.length + " values");
    }
    this.width = width;
    this.height = height;
    this.pixels = pixels;
  }

  public int width() {
    return width;
  }

  public int height() {
    return height;
  }

  /** The values themselves, row by row; not a copy. */
  public byte[] pixels() {
    return pixels;
  }

  /** The grey value at a pixel inside the picture, 0 to 255. */
  public int at(int x, int y) {
    return pixels[y * width + x] & 0xFF;
  }
}
