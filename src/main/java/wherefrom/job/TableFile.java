package wherefrom.job;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import wherefrom.files.Incoming;

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
    byte[] bytes = Incoming.read(file, MOST_BYTES);
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw new IOException(
          file.getFileName() + " is no text in UTF-8: save it as CSV, UTF-8. Nothing was added.",
          e);
    }
  }
}
