package wherefrom.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Drafts beside the place where they will stand, with a name that nothing has yet and the rights
 * that the person's umask gives: the system's own temporary files can be read by nobody else, and
 * stay so when they are moved.
 */
public final class DraftFiles {
  private static final int MOST = 10_000;

  /** The names of files that are made here, and of nothing else that is likely. */
  private static final Pattern FILE =
      Pattern.compile("(part\\d{1,10}-\\d{1,5}\\.tmp)|(\\.wherefrom-\\d{1,10}-\\d{1,5}\\.part)");

  /** Nothing takes this long to be written. */
  private static final Duration OLD = Duration.ofDays(1);

  private DraftFiles() {}

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

  /**
   * Removes the files that a kill left behind in a folder: only what has a name that is given here,
   * is a day old and is a file. What cannot be removed stays; it takes room and does no harm.
   */
  public static void clear(Path folder, Instant now) {
    if (!Files.isDirectory(folder)) {
      return;
    }
    try (Stream<Path> inside = Files.list(folder)) {
      for (Path file : inside.filter(DraftFiles::isOurs).toList()) {
        if (isOld(file, now)) {
          Files.deleteIfExists(file);
        }
      }
    } catch (IOException | UncheckedIOException e) {
      // The next start tries again.
    }
  }

  private static boolean isOurs(Path file) {
    return FILE.matcher(String.valueOf(file.getFileName())).matches()
        && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
  }

  private static boolean isOld(Path file, Instant now) throws IOException {
    Instant changed = Files.getLastModifiedTime(file, LinkOption.NOFOLLOW_LINKS).toInstant();
    return changed.isBefore(now.minus(OLD));
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
    throw new IOException(folder + " is full of drafts named " + ours + ". Delete them.");
  }
}
