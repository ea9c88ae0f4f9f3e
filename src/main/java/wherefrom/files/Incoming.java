package wherefrom.files;

import java.io.IOException;
import java.io.InputStream;
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
      throw new IOException(file + " is no file, but a pipe or a device: save it as a file first.");
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(most);
      if (in.read() >= 0) {
        throw new IOException(
            file + " is longer than " + size(most) + ": it is not what is wanted here.");
      }
      return bytes;
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
