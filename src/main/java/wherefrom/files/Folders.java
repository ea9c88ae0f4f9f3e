package wherefrom.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

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

  /** The folder and those above it that are not there yet, the deepest first. */
  public static List<Path> missing(Path folder) {
    List<Path> missing = new ArrayList<>();
    Path at = folder.toAbsolutePath();
    while (at != null && !Files.exists(at, LinkOption.NOFOLLOW_LINKS)) {
      missing.add(at);
      at = at.getParent();
    }
    return missing;
  }

  /** Removes those of some folders that are there and hold nothing, in this order. */
  public static void removeEmpty(List<Path> folders) throws IOException {
    for (Path folder : folders) {
      try {
        Files.deleteIfExists(folder);
      } catch (DirectoryNotEmptyException e) {
        // Somebody else has put something into it.
      }
    }
  }

  /** Removes a folder of our own with all that is in it; does nothing where there is none. */
  public static void remove(Path folder) throws IOException {
    if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    try (Stream<Path> inside = Files.walk(folder)) {
      for (Path path : inside.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
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
