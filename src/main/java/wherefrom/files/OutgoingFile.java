package wherefrom.files;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import wherefrom.files.AtomicFile.Content;

/**
 * A file that is there whole or not at all: written beside its place, forced to disk, then moved
 * there. A link is followed, and what it points to is written. A device or a pipe is written to,
 * never replaced.
 */
final class OutgoingFile implements Outgoing {
  private static final int MOST_LINKS = 40;

  /** What lies below these is the system's own, whatever it looks like. */
  private static final List<String> DEVICES = List.of("/dev/", "/proc/");

  /** A disk in memory that Linux keeps among the devices: its files are files. */
  private static final String MEMORY_DISK = "/dev/shm/";

  private final Path file;
  private final boolean replace;

  OutgoingFile(Path file, boolean replace) {
    this.file = file;
    this.replace = replace;
  }

  @Override
  public String toString() {
    return file.toString();
  }

  static boolean isTaken(Path file) {
    return !isDevice(file) && Files.exists(file);
  }

  private static boolean isDevice(Path file) {
    String name = file.toAbsolutePath().normalize().toString();
    boolean systems = DEVICES.stream().anyMatch(name::startsWith) && !name.startsWith(MEMORY_DISK);
    return systems || Incoming.isSpecial(file);
  }

  @Override
  public void write(Content content) throws IOException {
    if (isDevice(file)) {
      try (OutputStream out = Files.newOutputStream(file, StandardOpenOption.WRITE)) {
        content.writeTo(out);
      }
      return;
    }
    Path target = behindLinks(file.toAbsolutePath());
    Path folder = target.getParent();
    if (folder == null || Files.isDirectory(target)) {
      throw new IOException(file + " is a folder. Give the name of a file.");
    }
    refuseTaken(target);
    makeFolder(folder);
    write(content, target, folder);
    Folders.force(folder);
  }

  /** Where a link leads, though nothing may be there yet. */
  private static Path behindLinks(Path file) throws IOException {
    Path target = file;
    for (int followed = 0; Files.isSymbolicLink(target); followed++) {
      if (followed == MOST_LINKS) {
        throw new IOException(file + " is a link that leads to itself. Give another name.");
      }
      target = target.resolveSibling(Files.readSymbolicLink(target));
    }
    return target;
  }

  private void refuseTaken(Path target) throws IOException {
    if (!replace && Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
      throw new IOException(file + " is there already. Choose another name.");
    }
  }

  private static void makeFolder(Path folder) throws IOException {
    try {
      Folders.make(folder);
    } catch (FileAlreadyExistsException e) {
      throw new IOException(e.getFile() + " is not a folder. Nothing can be written in it.", e);
    }
  }

  private void write(Content content, Path target, Path folder) throws IOException {
    Path draft = DraftFiles.file(folder, ".wherefrom-", ".part");
    try {
      try (FileChannel channel = FileChannel.open(draft, StandardOpenOption.WRITE)) {
        OutputStream out = Channels.newOutputStream(channel);
        content.writeTo(new Unclosed(out));
        out.flush();
        channel.force(true);
      }
      keepRights(target, draft);
      move(draft, target);
    } finally {
      Files.deleteIfExists(draft);
    }
  }

  /** Who could read the older file can read the new one. */
  private static void keepRights(Path older, Path draft) throws IOException {
    if (Files.exists(older) && Files.getFileStore(older).supportsFileAttributeView("posix")) {
      Files.setPosixFilePermissions(draft, Files.getPosixFilePermissions(older));
    }
  }

  private void move(Path draft, Path target) throws IOException {
    if (!replace) {
      refuseTaken(target);
      Files.move(draft, target);
      return;
    }
    try {
      Files.move(draft, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(draft, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
