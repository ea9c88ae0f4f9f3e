package wherefrom.scan.find;

/**
 * One way to cut a picture into dark and light.
 *
 * @param level of the pyramid, 0 the whole picture
 * @param reach half the side of the square around a pixel, in pixels of that level
 * @param below grey values by which a dark pixel lies below the mean of its square
 * @param part of the picture's height that is looked at, from 0
 * @param parts into which the height is divided; they overlap a little
 */
public record Threshold(int level, int reach, int below, int part, int parts) {
  private static final int OVERLAP = 10;

  /** Over the whole picture. */
  public Threshold(int level, int reach, int below) {
    this(level, reach, below, 0, 1);
  }

  int firstRow(int height) {
    return Math.max(0, height * part / parts - height / OVERLAP);
  }

  /** The row after the last. */
  int endRow(int height) {
    return Math.min(height, height * (part + 1) / parts + height / OVERLAP);
  }
}
