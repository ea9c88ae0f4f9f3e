package wherefrom.pictures;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.ByteOrder;
import wherefrom.scan.picture.JpegFiles;

/** A JPEG file as a camera writes it that was turned: which side its rows and columns lie on. */
public final class Corners {
  /**
   * CIPA DC-008 / JEITA CP-3451, tag 0x0112: where row 0, then column 0, are on the upright view.
   */
  private static final String[] SIDES = {
    "top left",
    "top right",
    "bottom right",
    "bottom left",
    "left top",
    "right top",
    "right bottom",
    "left bottom"
  };

  private Corners() {}

  /**
   * The upright picture, stored as an orientation says.
   *
   * @param orientation 1 to 8
   */
  public static byte[] jpeg(BufferedImage upright, int orientation) throws IOException {
    String[] sides = SIDES[orientation - 1].split(" ", -1);
    boolean across = sides[0].equals("left") || sides[0].equals("right");
    int width = across ? upright.getHeight() : upright.getWidth();
    int height = across ? upright.getWidth() : upright.getHeight();
    BufferedImage stored = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int row = 0; row < height; row++) {
      for (int column = 0; column < width; column++) {
        int fromRow = away(sides[0], row, height);
        int fromColumn = away(sides[1], column, width);
        stored.setRGB(
            column,
            row,
            across ? upright.getRGB(fromRow, fromColumn) : upright.getRGB(fromColumn, fromRow));
      }
    }
    return JpegFiles.withOrientation(JpegFiles.of(stored), orientation, ByteOrder.BIG_ENDIAN);
  }

  /** A place counted from the top or the left, which lies so far from a side. */
  private static int away(String side, int far, int length) {
    return side.equals("top") || side.equals("left") ? far : length - 1 - far;
  }
}
