package wherefrom.job.image;

/**
 * A picture in colour, row by row from the top left, each pixel 0xRRGGBB. The pixels are not
 * copied: whoever makes the image must leave them alone.
 */
public final class ColourImage {
  private final int width;
  private final int height;
  private final int[] pixels;

  /**
   * @param pixels at least {@code width * height} values
   */
  public ColourImage(int width, int height, int[] pixels) {
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

  /** The colours themselves, row by row; not a copy. */
  public int[] pixels() {
    return pixels;
  }
}
