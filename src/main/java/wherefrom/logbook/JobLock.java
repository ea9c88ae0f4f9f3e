package wherefrom.logbook;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Holds a job against a second program, by two locks of the operating system: one on a file of its
 * own, one on the first file of the logbook, far behind its end. Deleting the lock file frees only
 * the first. Both go when the program ends, however it ends; the file stays.
 */
final class JobLock implements Closeable {
  static final String FILE = "logbook.lock";

  /** Where a lock hinders nobody from reading, also on systems whose locks forbid that. */
  private static final long BEHIND_THE_END = 1L << 62;

  /**
   * The folders held by this program. The system's lock is the program's as a whole: closing a
   * second channel would drop it, so a second one is never opened.
   */
  private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

  /** A file that is locked, by its key. */
  private record Locked(Object key, FileChannel channel) {}

  private final Path folder;
  private final Path real;
  private Locked own;
  private Optional<Object> book = Optional.empty();

  private JobLock(Path folder, Path real, Locked own) {
    this.folder = folder;
    this.real = real;
    this.own = own;
  }

  /**
   * Takes the lock; empty when another program, or this one, holds it.
   *
   * @throws IOException when the folder cannot be written to
   */
  static Optional<JobLock> tryTake(Path folder) throws IOException {
    Path real = folder.toRealPath();
    if (!HELD.add(real)) {
      return Optional.empty();
    }
    boolean taken = false;
    try {
      Optional<Locked> own = tryOwn(folder);
      if (own.isPresent()) {
        JobLock lock = new JobLock(folder, real, own.get());
        taken = lock.keepBook();
        if (taken) {
          return Optional.of(lock);
        }
        own.get().channel().close();
      }
      return Optional.empty();
    } finally {
      if (!taken) {
        HELD.remove(real);
      }
    }
  }

  private static Optional<Locked> tryOwn(Path folder) throws IOException {
    Path file = folder.resolve(FILE);
    FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    return tryLock(channel, 0)
        ? Optional.of(new Locked(HeldFiles.key(file), channel))
        : Optional.empty();
  }

  private static boolean tryLock(FileChannel channel, long at) throws IOException {
    boolean taken;
    try {
      taken = channel.tryLock(at, at == 0 ? Long.MAX_VALUE : 1, false) != null;
    } catch (OverlappingFileLockException e) {
      // This program holds it under another name; closing the channel would free that lock.
      return false;
    }
    if (!taken) {
      channel.close();
    }
    return taken;
  }

  /**
   * Whether the job is held still. A lock file that is gone or exchanged, or an exchanged logbook
   * file, is locked anew where no other program has done so.
   */
  boolean keep() throws IOException {
    return keepOwn() && keepBook();
  }

  private boolean keepOwn() throws IOException {
    if (isStill(folder.resolve(FILE), own.key())) {
      return true;
    }
    Optional<Locked> again = tryOwn(folder);
    if (again.isPresent()) {
      own.channel().close();
      own = again.get();
    }
    return again.isPresent();
  }

  private static boolean isStill(Path file, Object key) throws IOException {
    try {
      return HeldFiles.key(file).equals(key);
    } catch (NoSuchFileException e) {
      return false;
    }
  }

  private boolean keepBook() throws IOException {
    Path first = folder.resolve(LogFiles.name(1));
    if (!Files.exists(first) || (book.isPresent() && isStill(first, book.get()))) {
      return true;
    }
    letBookGo();
    FileChannel channel =
        FileChannel.open(first, StandardOpenOption.READ, StandardOpenOption.WRITE);
    boolean taken = tryLock(channel, BEHIND_THE_END);
    if (taken) {
      Object key = HeldFiles.key(first);
      HeldFiles.hold(key, channel);
      book = Optional.of(key);
    }
    return taken;
  }

  private void letBookGo() throws IOException {
    if (book.isPresent()) {
      HeldFiles.letGo(book.get());
      book = Optional.empty();
    }
  }

  @Override
  public void close() throws IOException {
    try {
      letBookGo();
      own.channel().close();
    } finally {
      HELD.remove(real);
    }
  }
}
