package wherefrom.logbook;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Holds a job against a second program. The lock is the operating system's and goes when the
 * program ends, however it ends; the file stays.
 */
final class JobLock implements Closeable {
  static final String FILE = "logbook.lock";

  /**
   * The folders held by this program. The system's lock is the program's as a whole: closing a
   * second channel would drop it, so a second one is never opened.
   */
  private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

  private final Path folder;
  private final FileChannel channel;

  private JobLock(Path folder, FileChannel channel) {
    this.folder = folder;
    this.channel = channel;
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
    FileChannel channel = null;
    try {
      channel =
          FileChannel.open(real.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      FileLock lock = channel.tryLock();
      taken = lock != null;
      return taken ? Optional.of(new JobLock(real, channel)) : Optional.empty();
    } finally {
      if (!taken) {
        HELD.remove(real);
        if (channel != null) {
          channel.close();
        }
      }
    }
  }

  @Override
  public void close() throws IOException {
    try {
      channel.close();
    } finally {
      HELD.remove(folder);
    }
  }
}
