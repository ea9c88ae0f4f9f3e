package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.stream.Stream;
import wherefrom.job.LogbookException;

/** What lies in a folder: a job, what an interrupted beginning left, or nothing. */
final class JobFolder {
  private JobFolder() {}

  /** A folder must hold a job. */
  static void requireJob(Path folder, LogDisk disk) {
    try {
      if (Files.isDirectory(folder) && !LogFiles.in(folder, disk).isEmpty()) {
        return;
      }
    } catch (IOException e) {
      throw new LogbookException(folder + " cannot be read: " + DiskErrors.of(e) + ".", e);
    }
    throw new LogbookException(
        "There is no job in "
            + folder
            + ": no "
            + LogFiles.name(1)
            + " lies there. Choose the job's own folder.");
  }

  /** Whether a job can be begun in a folder: it is not there, or nothing was ever kept in it. */
  static boolean isFree(Path folder) {
    if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      return true;
    }
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.map(each -> String.valueOf(each.getFileName())).allMatch(LogFiles::isLeft)
          && LogScan.of(folder, new RealDisk()).isUnused();
    } catch (IOException e) {
      return false;
    }
  }

  /** What there is to read in a folder, which must hold a job. */
  static FolderScan scan(Path folder) {
    RealDisk disk = new RealDisk();
    requireJob(folder, disk);
    return scan(folder, disk);
  }

  /** What there is to read in a folder. */
  static FolderScan scan(Path folder, LogDisk disk) {
    try {
      return LogScan.of(folder, disk);
    } catch (IOException e) {
      throw new LogbookException(
          "The logbook in " + folder + " cannot be read: " + DiskErrors.of(e) + ".", e);
    }
  }

  /** A folder must hold no job. A beginning that was interrupted before its first entry is none. */
  static FolderScan requireUnused(Path folder, LogDisk disk) throws IOException {
    FolderScan there = LogScan.of(folder, disk);
    if (!there.isUnused()) {
      throw new LogbookException(folder + " holds a job already. Choose another folder.");
    }
    return there;
  }
}
