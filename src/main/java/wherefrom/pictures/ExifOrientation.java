package wherefrom.pictures;

import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.exif.ExifIFD0Directory;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * How a camera was held: Exif tag 0x0112, Orientation (CIPA DC-008 / JEITA CP-3451, 4.6.4.A). Each
 * says where the stored picture's first row and first column belong when it stands upright.
 */
public enum ExifOrientation {
  TOP_LEFT(false, false, false),
  TOP_RIGHT(false, true, false),
  BOTTOM_RIGHT(false, true, true),
  BOTTOM_LEFT(false, false, true),
  LEFT_TOP(true, false, false),
  RIGHT_TOP(true, false, true),
  RIGHT_BOTTOM(true, true, true),
  LEFT_BOTTOM(true, true, false);

  private final boolean rowsBecomeColumns;
  private final boolean columnsBackwards;
  private final boolean rowsBackwards;

  ExifOrientation(boolean rowsBecomeColumns, boolean columnsBackwards, boolean rowsBackwards) {
    this.rowsBecomeColumns = rowsBecomeColumns;
    this.columnsBackwards = columnsBackwards;
    this.rowsBackwards = rowsBackwards;
  }

  /** The orientation of a file; top left where it says none, or none that Exif knows. */
  public static ExifOrientation of(Path file) {
    try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
      return of(in);
    } catch (IOException unreadable) {
      return TOP_LEFT;
    }
  }

  /** The orientation that a picture file says, read from its first byte on; else top left. */
  public static ExifOrientation of(InputStream file) {
    try {
      return ExifSource.read(file).getDirectoriesOfType(ExifIFD0Directory.class).stream()
          .map(exif -> exif.getInteger(ExifIFD0Directory.TAG_ORIENTATION))
          .filter(value -> value != null && value >= 1 && value <= values().length)
          .findFirst()
          .map(value -> values()[value - 1])
          .orElse(TOP_LEFT);
    } catch (ImageProcessingException | IOException | RuntimeException noMetadata) {
      return TOP_LEFT;
    }
  }

  /** Of the picture when it stands upright. */
  public int uprightWidth(int width, int height) {
    return rowsBecomeColumns ? height : width;
  }

  /** Of the picture when it stands upright. */
  public int uprightHeight(int width, int height) {
    return rowsBecomeColumns ? width : height;
  }

  /** Where a stored row begins among the upright pixels, row by row. */
  public int start(int row, int width, int height) {
    int across = columnsBackwards ? width - 1 : 0;
    int down = rowsBackwards ? height - 1 - row : row;
    return rowsBecomeColumns ? across * height + down : down * width + across;
  }

  /** How far it is to the row's next pixel among the upright ones. */
  public int step(int height) {
    int step = rowsBecomeColumns ? height : 1;
    return columnsBackwards ? -step : step;
  }
}
