package wherefrom.job.pages;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A photograph of the build record.
 *
 * @param title what it shows
 * @param caption what else to know of it; may be empty
 * @param source where the picture comes from
 */
public record RecordPicture(String title, String caption, Source source) {

  /** Gives a PNG or JPEG picture. */
  @FunctionalInterface
  public interface Source {
    /**
     * The picture's file, from its first byte on.
     *
     * @throws IOException when it cannot be read
     */
    InputStream open() throws IOException;
  }

  /** A picture file. */
  public static RecordPicture of(String title, String caption, Path file) {
    return new RecordPicture(title, caption, () -> Files.newInputStream(file));
  }
}
