package wherefrom.logbook;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * The file that lines are written to, with what is known of it: which file it is, how long, and how
 * it ends. So it is noticed when its name stands for another file, or when others wrote in it.
 */
final class LogTail implements Closeable {
  private static final int IDLE_WRITES = 16;

  private final LogDisk disk;
  private final LogDisk.Output out;
  private final Object key;
  private Path file;
  private long size;
  private int lastLine;
  private String lastSum;

  private LogTail(
      LogDisk disk,
      LogDisk.Output out,
      Path file,
      Object key,
      long size,
      int lastLine,
      String lastSum) {
    this.disk = disk;
    this.out = out;
    this.file = file;
    this.key = key;
    this.size = size;
    this.lastLine = lastLine;
    this.lastSum = lastSum;
  }

  /** A new file, empty. */
  static LogTail create(LogDisk disk, Path file) throws IOException {
    return of(disk, disk.create(file), file, 0, 0, "");
  }

  /** Goes on in the last file that was read, which is forced first. */
  static LogTail goOn(LogDisk disk, Path file, FolderScan read) throws IOException {
    LogDisk.Output out = disk.append(file);
    LogTail tail = of(disk, out, file, read.lastSize(), read.lastLine(), read.tip());
    try {
      out.force();
      return tail;
    } catch (IOException e) {
      tail.closeQuietly();
      throw e;
    }
  }

  private static LogTail of(
      LogDisk disk, LogDisk.Output out, Path file, long size, int lastLine, String lastSum)
      throws IOException {
    try {
      Object key = disk.look(file, 0).key();
      return new LogTail(disk, out, file, key, size, lastLine, lastSum);
    } catch (IOException e) {
      out.close();
      throw e;
    }
  }

  /** Whether the path names this file and it ends as it was left. */
  boolean isAsKnown() throws IOException {
    LogDisk.Named now;
    try {
      now = disk.look(file, lastLine + 1);
    } catch (NoSuchFileException e) {
      return false;
    }
    return now.key().equals(key) && now.size() == size && now.end().equals(lastSum);
  }

  /**
   * Writes a line and forces it.
   *
   * @param line without its line end
   * @throws IOException when it may not be on disk
   */
  void write(byte[] line) throws IOException {
    byte[] ended = Sums.ended(line);
    ByteBuffer bytes = ByteBuffer.wrap(ended);
    int idle = 0;
    while (bytes.hasRemaining()) {
      idle = out.write(bytes) > 0 ? 0 : idle + 1;
      if (idle == IDLE_WRITES) {
        throw new IOException("the disk takes no more bytes");
      }
    }
    out.force();
    size += ended.length;
    lastLine = line.length;
    lastSum = Sums.chain(line);
  }

  /** Gives the file its name, once what is in it is whole. */
  void rename(Path name) throws IOException {
    disk.rename(file, name);
    file = name;
  }

  void closeQuietly() {
    try {
      out.close();
    } catch (IOException e) {
      // What was not forced does not count anyway.
    }
  }

  @Override
  public void close() throws IOException {
    out.close();
  }
}
