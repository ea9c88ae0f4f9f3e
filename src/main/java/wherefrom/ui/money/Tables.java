package wherefrom.ui.money;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Tables from other programs. */
final class Tables {
  private Tables() {}

  /**
   * The text of a table.
   *
   * @throws IOException with a plain sentence when the file is no text in UTF-8
   */
  static String read(Path file) throws IOException {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (CharacterCodingException e) {
      throw new IOException(
          file.getFileName() + " is no text in UTF-8: save it as CSV, UTF-8. Nothing was added.",
          e);
    }
  }
}
