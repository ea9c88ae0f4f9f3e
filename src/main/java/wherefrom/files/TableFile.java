package wherefrom.files;

import java.io.IOException;
import java.nio.file.Path;

/** Tables from other programs. */
public final class TableFile {
  private static final int MOST_BYTES = 5_000_000;

  private TableFile() {}

  /**
   * The text of a table.
   *
   * @throws IOException with a plain sentence when the file is no text in UTF-8, or far too long
   */
  public static String read(Path file) throws IOException {
    return Incoming.text(file, MOST_BYTES, "Save it as CSV, UTF-8. Nothing was added.");
  }
}
