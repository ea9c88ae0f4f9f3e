package wherefrom.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Folders whose names are on disk, not only in memory. */
public final class Folders {
  private Folders() {}

  /**
   * Makes a folder and those above it that are missing, and forces the name of each that was made:
   * without that a power cut takes the folder away with all that was forced in it.
   */
  public static void make(Path folder) throws IOException {
    Path whole = folder.toAbsolutePath();
    if (Files.isDirectory(whole)) {
      return;
    }
    Path above = whole.getParent();
    if (above != null) {
      make(above);
    }
    try {
      Files.createDirectory(whole);
    } catch (FileAlreadyExistsException e) {
      if (!Files.isDirectory(whole)) {
        throw e;
      }
    }
    if (above != null) {
      force(above);
    }
  }

  /**
   * Forces a folder, so that a file created in it is still named there after a power cut. Where a
   * folder cannot be opened (on Windows none can) or its file system knows no forcing of folders,
   * it does nothing: there the names rest on the file system's own care.
   *
   * @throws IOException when the disk fails
   */
  public static void force(Path folder) throws IOException {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (AccessDeniedException e) {
      // A folder that cannot be opened: nothing was tried, so nothing failed.
    } catch (IOException e) {
      if (!isUnknownToTheFileSystem(e)) {
        throw e;
      }
    }
  }

  /** What a file system answers that has nothing to force, by the words for EINVAL. */
  private static boolean isUnknownToTheFileSystem(IOException e) {
    return String.valueOf(e.getMessage()).contains("Invalid argument");
  }
}
