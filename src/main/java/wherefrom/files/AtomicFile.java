package wherefrom.files;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.function.UnaryOperator;

/**
 * Writes a file so that it appears whole or not at all, in four steps: a temporary file beside it,
 * force to disk, move over the old one, force the folder. When a step fails the old file stands as
 * it was and the temporary one is removed.
 */
public final class AtomicFile {

  /** Writes the content. */
  @FunctionalInterface
  public interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  private final UnaryOperator<OutputStream> through;

  public AtomicFile() {
    this(out -> out);
  }

  /**
   * @param through what the content passes on its way to the disk, such as a disk that is full
   */
  public AtomicFile(UnaryOperator<OutputStream> through) {
    this.through = through;
  }

  /** Writes these bytes. */
  public void write(Path file, byte[] content) throws IOException {
    write(file, out -> out.write(content));
  }

  /** Writes what the content gives. */
  public void write(Path file, Content content) throws IOException {
    Path target = file.toAbsolutePath();
    Path folder = folderOf(target);
    Path temporary = DraftFiles.file(folder, "part", ".tmp");
    try {
      try (FileChannel channel = FileChannel.open(temporary, StandardOpenOption.WRITE)) {
        OutputStream out = through.apply(Channels.newOutputStream(channel));
        content.writeTo(out);
        out.flush();
        channel.force(true);
      }
      moveOver(temporary, target);
    } finally {
      Files.deleteIfExists(temporary);
    }
    Folders.force(folder);
  }

  private static Path folderOf(Path target) throws IOException {
    Path folder = target.getParent();
    if (folder == null) {
      throw new IOException(target + " is not a file that can be written.");
    }
    Folders.make(folder);
    return folder;
  }

  private static void moveOver(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
