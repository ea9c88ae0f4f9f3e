package wherefrom.logbook;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.Optional;
import wherefrom.job.LoggedEntry;

/**
 * Writes entries, each only into the file that the folder names at that moment, before and after.
 * Where that is another file with the same history, work goes on there; with any other history
 * nothing is written. A file in which a write failed is never written to again: what reached the
 * disk of it is unknown. The next file's header says after which line it goes on, so that whatever
 * lies behind that line does not count.
 */
final class LogWriter implements Closeable {
  private final LogDisk disk;
  private final Path folder;
  private final JobLock lock;
  private int number;
  private String tip;
  private Optional<LogTail> tail = Optional.empty();

  /** The sum of a line that failed, and may be on disk all the same. */
  private Optional<String> failed = Optional.empty();

  /**
   * Goes on behind what was read, which is forced first, and the files' names with it: nothing is
   * built on what is not on disk.
   */
  LogWriter(LogDisk disk, Path folder, JobLock lock, FolderScan read) throws IOException {
    this.disk = disk;
    this.folder = folder;
    this.lock = lock;
    this.number = read.lastNumber();
    this.tip = read.tip();
    if (number > 0) {
      LogTail last = last(read);
      if (read.lastWhole() && !read.entries().isEmpty()) {
        tail = Optional.of(last);
      } else {
        last.close();
      }
    }
  }

  private LogTail last(FolderScan read) throws IOException {
    disk.forceFolder(folder);
    return LogTail.goOn(disk, folder.resolve(LogFiles.name(number)), read);
  }

  /**
   * Writes an entry and forces it.
   *
   * @throws ChangedException when the folder holds something else than what was written to it
   * @throws IOException when the entry may not be on disk
   */
  void append(LoggedEntry entry) throws IOException {
    prepare(entry.sequence());
    if (tail.isPresent()) {
      write(tail.get(), entry);
    } else {
      begin(entry);
    }
    requireUnchanged();
    tip = failed.orElse(tip);
    failed = Optional.empty();
  }

  private void prepare(long next) throws IOException {
    if (tail.isPresent() && tail.get().isAsKnown()) {
      requireLock();
      return;
    }
    FolderScan found = read(next);
    requireLock();
    goOn(found, next);
  }

  /** Reads the folder anew; it must hold the history that was written, and no more. */
  private FolderScan read(long next) throws IOException {
    try {
      FolderScan found = LogScan.of(folder, disk);
      if (found.trouble().isPresent() || !found.isAt(tip, failed)) {
        throw ChangedException.other(found, next - 1);
      }
      return found;
    } catch (NoSuchFileException | NotDirectoryException e) {
      throw ChangedException.gone(folder);
    }
  }

  private void requireLock() throws IOException {
    try {
      if (!lock.keep()) {
        throw ChangedException.held();
      }
    } catch (NoSuchFileException e) {
      throw ChangedException.gone(folder);
    }
  }

  private void goOn(FolderScan found, long next) throws IOException {
    leave();
    number = found.lastNumber();
    if (found.entries().isEmpty()) {
      failed = Optional.empty();
    } else if (failed.isEmpty() && found.lastWhole()) {
      tail = Optional.of(last(found));
      tip = found.tip();
    } else {
      startNext(next);
      failed = Optional.empty();
    }
  }

  private void write(LogTail file, LoggedEntry entry) throws IOException {
    byte[] line = LogLine.of(entry, tip);
    failed = Optional.of(Sums.chain(line));
    file.write(line);
  }

  /** The first entry and the header before it appear together or not at all. */
  private void begin(LoggedEntry first) throws IOException {
    Path part = folder.resolve(LogFiles.PART);
    Path file = folder.resolve(LogFiles.name(number + 1));
    byte[] header = new LogHeader(LogHeader.VERSION, tip, first.sequence()).line();
    disk.delete(part);
    LogTail begun = LogTail.create(disk, part);
    try {
      begun.write(header);
      tip = Sums.chain(header);
      write(begun, first);
      begun.rename(file);
      disk.forceFolder(folder);
    } catch (IOException e) {
      begun.closeQuietly();
      removeQuietly(part);
      removeQuietly(file);
      throw e;
    }
    number++;
    tail = Optional.of(begun);
  }

  private void requireUnchanged() throws IOException {
    boolean unchanged = tail.isPresent() && tail.get().isAsKnown();
    requireLock();
    if (!unchanged) {
      throw ChangedException.meanwhile();
    }
  }

  /**
   * Leaves the file in which a write failed and begins the next.
   *
   * @param next the sequence of the next entry
   * @return whether the next file is on disk, so that the failed entry surely does not count
   */
  boolean stepAside(long next) {
    leave();
    try {
      FolderScan found = read(next);
      requireLock();
      goOn(found, next);
      return true;
    } catch (IOException e) {
      leave();
      return false;
    }
  }

  private void leave() {
    tail.ifPresent(LogTail::closeQuietly);
    tail = Optional.empty();
  }

  private void startNext(long next) throws IOException {
    Path file = folder.resolve(LogFiles.name(number + 1));
    byte[] header = new LogHeader(LogHeader.VERSION, tip, next).line();
    LogTail begun = LogTail.create(disk, file);
    number++;
    try {
      begun.write(header);
      disk.forceFolder(folder);
    } catch (IOException e) {
      begun.closeQuietly();
      removeQuietly(file);
      throw e;
    }
    tip = Sums.chain(header);
    tail = Optional.of(begun);
  }

  /** A file that holds no entry that counts need not stay; where it does, nothing follows it. */
  private void removeQuietly(Path file) {
    try {
      disk.delete(file);
    } catch (IOException e) {
      // The folder is read anew before the next entry, whatever lies there then.
    }
  }

  @Override
  public void close() throws IOException {
    if (tail.isPresent()) {
      tail.get().close();
    }
  }
}
