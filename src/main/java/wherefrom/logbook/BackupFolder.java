package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import wherefrom.files.AtomicFile;
import wherefrom.files.DraftFiles;
import wherefrom.files.Progress;
import wherefrom.job.LogbookException;
import wherefrom.job.ports.Backups;
import wherefrom.job.ports.Damage;

/**
 * The copy of a job in a second folder. A copy may only grow: a file there that is no beginning of
 * the job's own file is of another job, or one of the two is damaged, and is left alone. What is
 * damaged here goes to a folder of its own and never over what is sound there.
 */
public final class BackupFolder implements Backups {
  private static final String DAMAGED = "-damaged";

  private final Settling settling;

  public BackupFolder() {
    this(new SystemSettling());
  }

  BackupFolder(Settling settling) {
    this.settling = settling;
  }

  @Override
  public Copied copy(Path jobFolder, Path second) throws IOException {
    Path job = jobFolder.toRealPath();
    if (second.toAbsolutePath().normalize().startsWith(job)) {
      throw new IOException("The copy cannot lie inside the job. Choose a folder elsewhere.");
    }
    String name = String.valueOf(job.getFileName());
    Path target = second.resolve(name);
    if (Files.exists(target) && Files.isSameFile(target, job)) {
      throw new IOException(second + " is where the job itself lies. Choose a folder elsewhere.");
    }
    try {
      FolderScan scanned = scan(job);
      List<String> damage = Damage.among(FileChecks.findings(job, scanned));
      boolean sound = FileChecks.isSound(scanned);
      Path folder = sound ? target : aside(job, target);
      int files = copyAll(job, folder);
      return new Copied(folder, files, scanned.entries().size(), damage, settling.settle(folder));
    } catch (LogbookException e) {
      throw new IOException(e.getMessage(), e);
    } catch (FileSystemException e) {
      throw new IOException(
          "The copy could not be written: "
              + DiskErrors.of(e)
              + ". Make room there and check that it can be written to. Or choose another"
              + " folder.",
          e);
    }
  }

  @Override
  public void tidy(Path second, Instant now) {
    DraftFiles.clear(second, now);
    Leftovers old = new Leftovers(now);
    FileShelf.jobFolders(second).forEach(old::clearJob);
  }

  private static FolderScan scan(Path job) throws IOException {
    FileChecks.requireJob(job);
    FolderScan scanned = LogScan.of(job, new RealDisk());
    if (scanned.isUnused()) {
      throw new LogbookException(FolderScan.unused(job));
    }
    return scanned;
  }

  /** A folder for what is damaged: the first that holds nothing, or an earlier state of it. */
  private static Path aside(Path job, Path target) throws IOException {
    Path folder = target.resolveSibling(target.getFileName() + DAMAGED);
    for (int number = 2; !canGrow(job, folder); number++) {
      folder = target.resolveSibling(target.getFileName() + DAMAGED + "-" + number);
    }
    return folder;
  }

  private static boolean canGrow(Path job, Path folder) throws IOException {
    for (int number : LogFiles.in(job, new RealDisk()).keySet()) {
      Path copy = folder.resolve(LogFiles.name(number));
      byte[] bytes = HeldFiles.read(job.resolve(LogFiles.name(number)));
      if (Files.exists(copy) && !isBeginning(Files.readAllBytes(copy), bytes)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isBeginning(byte[] some, byte[] whole) {
    int same = Arrays.mismatch(some, whole);
    return same < 0 || same == some.length;
  }

  private static int copyAll(Path job, Path target) throws IOException {
    int files = 0;
    int done = 0;
    List<String> names = JobFiles.of(job);
    for (String name : names) {
      Progress.step(done++, names.size());
      byte[] bytes = HeldFiles.read(job.resolve(name));
      Path copy = target.resolve(name);
      if (isWanted(copy, name, bytes)) {
        new AtomicFile().write(copy, bytes);
        requireReadBack(copy, bytes);
        files++;
      }
    }
    return files;
  }

  private static void requireReadBack(Path copy, byte[] bytes) throws IOException {
    if (!ReadBack.holds(copy, bytes)) {
      throw new IOException(copy + " reads back differently than written. Use another drive.");
    }
  }

  /** Whether the copy is behind; where it is something else, it is not touched. */
  private static boolean isWanted(Path copy, String name, byte[] bytes) throws IOException {
    if (!Files.exists(copy)) {
      return true;
    }
    byte[] there = Files.readAllBytes(copy);
    return LogFiles.isOne(name)
        ? isGrown(copy, there, bytes)
        : !PhotoFiles.isWhole(copy, there) && PhotoFiles.isWhole(copy, bytes);
  }

  private static boolean isGrown(Path copy, byte[] there, byte[] bytes) throws IOException {
    int same = Arrays.mismatch(there, bytes);
    if (same == bytes.length) {
      throw new IOException(
          copy
              + " is newer than the job itself. The copy was left as it is. Go on with the"
              + " copy, or choose another folder.");
    }
    if (same >= 0 && same < there.length) {
      throw new IOException(
          copy
              + " is not an earlier state of this job. They differ from byte "
              + same
              + " on. It was left as it is. Check both, or choose another folder.");
    }
    return there.length < bytes.length;
  }
}
