package wherefrom.logbook;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import wherefrom.job.LoggedEntry;

/**
 * Writes entries. A file in which a write failed is never written to again: what reached the disk
 * of it is unknown. The next file's header says after which line it goes on, so that whatever lies
 * behind that line does not count.
 */
final class LogWriter implements Closeable {
  private static final int IDLE_WRITES = 16;

  private final LogDisk disk;
  private final Path folder;
  private int number;
  private String tip;
  private Optional<LogDisk.Output> output = Optional.empty();

  /**
   * Goes on behind what was read, which is forced first: nothing is built on what is not on disk.
   */
  LogWriter(LogDisk disk, Path folder, Scanned scanned) throws IOException {
    this.disk = disk;
    this.folder = folder;
    this.number = scanned.lastNumber();
    this.tip = scanned.tip();
    if (number > 0) {
      LogDisk.Output last = disk.append(folder.resolve(LogFiles.name(number)));
      try {
        last.force();
      } catch (IOException e) {
        closeQuietly(last);
        throw e;
      }
      if (scanned.lastWhole()) {
        output = Optional.of(last);
      } else {
        last.close();
      }
    }
  }

  /**
   * Writes an entry and forces it.
   *
   * @throws IOException when the entry may not be on disk
   */
  void append(LoggedEntry entry) throws IOException {
    if (output.isEmpty()) {
      output = Optional.of(startNext(entry.sequence()));
    }
    byte[] line = LogLine.of(entry, tip);
    write(output.get(), line);
    tip = Sums.chain(line);
  }

  /**
   * Leaves the file in which a write failed and begins the next.
   *
   * @param next the sequence of the next entry
   * @return whether the next file is on disk, so that the failed entry surely does not count
   */
  boolean stepAside(long next) {
    output.ifPresent(LogWriter::closeQuietly);
    output = Optional.empty();
    try {
      output = Optional.of(startNext(next));
      return true;
    } catch (IOException e) {
      return false;
    }
  }

  private LogDisk.Output startNext(long next) throws IOException {
    Path file = folder.resolve(LogFiles.name(number + 1));
    byte[] header = new LogHeader(LogHeader.VERSION, tip, next).line();
    LogDisk.Output begun = disk.create(file);
    number++;
    try {
      write(begun, header);
      disk.forceFolder(folder);
    } catch (IOException e) {
      closeQuietly(begun);
      forget(file);
      throw e;
    }
    tip = Sums.chain(header);
    return begun;
  }

  /** A file that holds no entry need not stay; where it does, the next number is taken. */
  private void forget(Path file) {
    try {
      disk.delete(file);
      number--;
    } catch (IOException e) {
      // Its header counts or does not: either way nothing follows it.
    }
  }

  private static void write(LogDisk.Output out, byte[] line) throws IOException {
    byte[] ended = Arrays.copyOf(line, line.length + 1);
    ended[line.length] = '\n';
    ByteBuffer bytes = ByteBuffer.wrap(ended);
    int idle = 0;
    while (bytes.hasRemaining()) {
      idle = out.write(bytes) > 0 ? 0 : idle + 1;
      if (idle == IDLE_WRITES) {
        throw new IOException("the disk takes no more bytes");
      }
    }
    out.force();
  }

  private static void closeQuietly(LogDisk.Output out) {
    try {
      out.close();
    } catch (IOException e) {
      // What was not forced does not count anyway.
    }
  }

  @Override
  public void close() throws IOException {
    if (output.isPresent()) {
      output.get().close();
    }
  }
}
