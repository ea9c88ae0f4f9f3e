package wherefrom.scan.picture;

import wherefrom.job.image.GreyImage;
import wherefrom.pictures.ExifOrientation;

/** Takes the rows of a stored picture and puts them where they belong upright. */
final class UprightPixels {
  private final int width;
  private final int height;
  private final ExifOrientation orientation;
  private final byte[] pixels;

  /**
   * @param width of the stored picture
   */
  UprightPixels(int width, int height, ExifOrientation orientation) {
    this.width = width;
    this.height = height;
    this.orientation = orientation;
    this.pixels = new byte[width * height];
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  /** Puts one stored row, of grey values 0 to 255. */
  void put(int row, int[] grey) {
    int at = orientation.start(row, width, height);
    int step = orientation.step(height);
    for (int column = 0; column < width; column++) {
      pixels[at] = (byte) grey[column];
      at += step;
    }
  }

  GreyImage image() {
    return new GreyImage(
        orientation.uprightWidth(width, height), orientation.uprightHeight(width, height), pixels);
  }
}
