package wherefrom.print;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * Writes a file that is there whole or not at all: it is written beside its place and then moved
 * there. When anything fails, an older file stays as it was and nothing is left beside it.
 */
final class FinishedFile {
  private FinishedFile() {}

  /** What fills the file. */
  interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  static void write(Path file, Content content) throws IOException {
    Path target = file.toAbsolutePath();
    Path folder = target.getParent();
    if (folder == null || Files.isDirectory(target)) {
      throw new IOException(file + " is a folder: give the name of a file");
    }
    Files.createDirectories(folder);
    Path draft = folder.resolve("." + target.getFileName() + ".part");
    try {
      try (OutputStream out = Files.newOutputStream(draft)) {
        content.writeTo(out);
      }
      move(draft, target);
    } finally {
      Files.deleteIfExists(draft);
    }
  }

  private static void move(Path draft, Path target) throws IOException {
    try {
      Files.move(
          draft, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(draft, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
