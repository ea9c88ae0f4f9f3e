package wherefrom.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A file of the person's that is read whole: of a length that it can have, and no pipe. */
public final class Incoming {
  private static final int MEGABYTE = 1_000_000;

  private Incoming() {}

  /**
   * The bytes of a file.
   *
   * @param most how many it may have
   * @throws IOException with a plain sentence when it is too long, a pipe or a device; or what the
   *     system says
   */
  public static byte[] read(Path file, int most) throws IOException {
    if (isSpecial(file)) {
      throw new IOException(file + " is a pipe or a device. Save it as a file first.");
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(most);
      if (in.read() >= 0) {
        throw new IOException(
            file + " is longer than " + size(most) + ". It is not what is wanted here.");
      }
      return bytes;
    }
  }

  /**
   * The text of a file.
   *
   * @throws IOException with a plain sentence when it is no text in UTF-8, too; the sentence goes
   *     on with what to do
   */
  public static String text(Path file, int most, String remedy) throws IOException {
    byte[] bytes = read(file, most);
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw new IOException(file.getFileName() + " is not text in UTF-8: " + remedy, e);
    }
  }

  private static String size(int bytes) {
    return bytes / MEGABYTE + " MB";
  }

  /** Whether a path names a pipe, a device or a socket: reading it may never end. */
  public static boolean isSpecial(Path file) {
    return Files.exists(file) && !Files.isRegularFile(file) && !Files.isDirectory(file);
  }
}
