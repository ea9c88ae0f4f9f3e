package wherefrom.files;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Drafts beside the place where they will stand, with a name that nothing has yet and the rights
 * that the person's umask gives: the system's own temporary files can be read by nobody else, and
 * stay so when they are moved.
 */
public final class Beside {
  private static final int MOST = 10_000;

  private Beside() {}

  /** Makes something of a name that is free. */
  private interface Making {
    void make(Path path) throws IOException;
  }

  /** A new empty file in a folder. */
  public static Path file(Path folder, String prefix, String suffix) throws IOException {
    return make(folder, prefix, suffix, Files::createFile);
  }

  /** A new empty folder in a folder. */
  public static Path folder(Path folder, String prefix) throws IOException {
    return make(folder, prefix, "", Files::createDirectory);
  }

  private static Path make(Path folder, String prefix, String suffix, Making making)
      throws IOException {
    String ours = prefix + ProcessHandle.current().pid() + "-";
    for (int number = 1; number <= MOST; number++) {
      Path path = folder.resolve(ours + number + suffix);
      try {
        making.make(path);
        return path;
      } catch (FileAlreadyExistsException e) {
        // The next number is tried.
      }
    }
    throw new IOException(folder + " is full of drafts named " + ours + ": clear them away.");
  }
}
