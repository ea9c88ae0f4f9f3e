package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.files.Folders;
import wherefrom.job.Appended;
import wherefrom.job.LocalBenches;
import wherefrom.job.Logbook;
import wherefrom.job.LogbookCondition;
import wherefrom.job.LogbookException;
import wherefrom.job.LoggedEntry;
import wherefrom.job.NewEntry;

/** A logbook in numbered files, {@code logbook-0001.jsonl} and on; LOGBOOK.md has the layout. */
public final class LogbookFile implements Logbook {
  private final Path folder;
  private final List<LoggedEntry> entries;
  private final Optional<JobLock> lock;
  private final Optional<LogWriter> writer;
  private final LogbookCondition condition;
  private final LocalBenches benches = new LocalBenches();

  private LogbookFile(
      Path folder,
      List<LoggedEntry> entries,
      Optional<JobLock> lock,
      Optional<LogWriter> writer,
      LogbookCondition condition) {
    this.folder = folder;
    this.entries = new ArrayList<>(entries);
    this.lock = lock;
    this.writer = writer;
    this.condition = condition;
  }

  /**
   * Begins a logbook.
   *
   * @throws LogbookException when the folder holds one already, or cannot be written to
   */
  public static LogbookFile create(Path folder) {
    return create(folder, new RealDisk());
  }

  static LogbookFile create(Path folder, LogDisk disk) {
    try {
      Folders.make(folder);
      JobFolder.requireUnused(folder, disk);
      JobLock lock =
          JobLock.tryTake(folder)
              .orElseThrow(
                  () ->
                      new LogbookException("Another program is starting a job in " + folder + "."));
      return begun(folder, disk, lock);
    } catch (IOException e) {
      throw new LogbookException(
          "No job can be started in " + folder + ": " + DiskErrors.of(e) + ".", e);
    }
  }

  private static LogbookFile begun(Path folder, LogDisk disk, JobLock lock) throws IOException {
    try {
      FolderScan nothing = JobFolder.requireUnused(folder, disk);
      Path above = folder.toAbsolutePath().getParent();
      if (above != null) {
        disk.forceFolder(above);
      }
      LogWriter writer = new LogWriter(disk, folder, lock, nothing);
      return new LogbookFile(
          folder, List.of(), Optional.of(lock), Optional.of(writer), new LogbookCondition.Sound());
    } catch (IOException | RuntimeException e) {
      lock.close();
      throw e;
    }
  }

  /**
   * Opens a logbook, for reading only where it is damaged or another program holds it.
   *
   * @throws LogbookException when there is none, or none that can be read
   */
  public static LogbookFile open(Path folder) {
    return open(folder, new RealDisk());
  }

  static LogbookFile open(Path folder, LogDisk disk) {
    JobFolder.requireJob(folder, disk);
    try {
      Optional<JobLock> lock = JobLock.tryTake(folder);
      if (lock.isEmpty()) {
        return reading(
            folder,
            JobFolder.scan(folder, disk),
            "Another program has this job open. Here it is open for reading only. Close"
                + " it there first, then open it again.");
      }
      return opened(folder, disk, lock.get());
    } catch (IOException e) {
      return reading(
          folder,
          JobFolder.scan(folder, disk),
          "This job cannot be written to ("
              + DiskErrors.of(e)
              + "). It is open for reading only. Check the folder's permissions and the disk.");
    }
  }

  /** Reads a logbook as it stands, without holding it against anyone. */
  public static LogbookFile read(Path folder) {
    return of(folder, JobFolder.scan(folder));
  }

  private static LogbookFile opened(Path folder, LogDisk disk, JobLock lock) throws IOException {
    try {
      FolderScan scanned = JobFolder.scan(folder, disk);
      if (scanned.trouble().isPresent()) {
        lock.close();
        return reading(folder, scanned, "");
      }
      LogWriter writer = new LogWriter(disk, folder, lock, scanned);
      LogbookCondition condition =
          scanned
              .lastCut()
              .<LogbookCondition>map(cut -> new LogbookCondition.CutLine(cut.sentence()))
              .orElseGet(LogbookCondition.Sound::new);
      return new LogbookFile(
          folder, scanned.entries(), Optional.of(lock), Optional.of(writer), condition);
    } catch (IOException | RuntimeException e) {
      lock.close();
      throw e;
    }
  }

  private static LogbookFile reading(Path folder, FolderScan scanned, String why) {
    String sentence =
        scanned.trouble().map(trouble -> trouble.sentence(scanned.entries().size())).orElse(why);
    return new LogbookFile(
        folder,
        scanned.entries(),
        Optional.empty(),
        Optional.empty(),
        new LogbookCondition.ReadOnly(sentence));
  }

  /** A logbook as it was read, for reading only. */
  static LogbookFile of(Path folder, FolderScan scanned) {
    return reading(folder, scanned, "It is open for reading only.");
  }

  /** The job's folder. */
  public Path folder() {
    return folder;
  }

  @Override
  public List<LoggedEntry> entries() {
    synchronized (entries) {
      return List.copyOf(entries);
    }
  }

  @Override
  public List<LoggedEntry> since(long sequence) {
    synchronized (entries) {
      return List.copyOf(entries.subList((int) sequence, entries.size()));
    }
  }

  @Override
  public long newAct() {
    return benches.newAct();
  }

  @Override
  public int takeBench(int wanted) {
    return benches.take(wanted);
  }

  @Override
  public void leaveBench(int bench) {
    benches.leave(bench);
  }

  @Override
  public void watch(Runnable news) {
    benches.watch(news);
  }

  @Override
  public LogbookCondition condition() {
    return condition;
  }

  /** Benches of this program write one after the other; no other program can. */
  @Override
  public Appended append(long expected, NewEntry entry) {
    synchronized (entries) {
      if (expected < entries.size()) {
        return new Appended.OthersCameFirst(since(expected));
      }
      LoggedEntry logged = entry.at(entries.size() + 1L);
      append(logged);
      entries.add(logged);
      benches.tell();
      return new Appended.Done(logged);
    }
  }

  private void append(LoggedEntry logged) {
    LogWriter open =
        writer.orElseThrow(
            () -> new LogbookException("Nothing was written. " + condition.sentence()));
    try {
      write(open, logged);
    } catch (ChangedException e) {
      throw new LogbookException(String.valueOf(e.getMessage()), e);
    } catch (IOException e) {
      boolean surely = open.stepAside(logged.sequence());
      throw new LogbookException(
          "The step could not be kept: "
              + DiskErrors.of(e)
              + ". "
              + (surely
                  ? "It does not count. Make room on the disk, then do it again."
                  : "Make room on the disk. Then do it again before you close the job."),
          e);
    }
  }

  /** Where the file was exchanged at the very moment, the step is written once more, to the new. */
  private static void write(LogWriter open, LoggedEntry logged) throws IOException {
    try {
      open.append(logged);
    } catch (ChangedException e) {
      if (!open.stepAside(logged.sequence())) {
        throw e;
      }
      open.append(logged);
    }
  }

  @Override
  public void close() {
    try {
      if (writer.isPresent()) {
        writer.get().close();
      }
      if (lock.isPresent()) {
        lock.get().close();
      }
    } catch (IOException e) {
      throw new LogbookException("The job could not be closed: " + DiskErrors.of(e) + ".", e);
    }
  }
}
