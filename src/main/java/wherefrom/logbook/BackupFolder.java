package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import wherefrom.files.AtomicFile;
import wherefrom.job.Backups;

/**
 * The copy of a job in a second folder. A copy may only grow: a file there that is no beginning of
 * the job's own file is of another job, or one of the two is damaged, and is left alone.
 */
public final class BackupFolder implements Backups {
  @Override
  public Copied copy(Path jobFolder, Path second) throws IOException {
    Path job = jobFolder.toRealPath();
    if (second.toAbsolutePath().normalize().startsWith(job)) {
      throw new IOException("The copy cannot lie inside the job. Choose a folder elsewhere.");
    }
    Path target = second.resolve(String.valueOf(job.getFileName()));
    if (Files.exists(target) && Files.isSameFile(target, job)) {
      throw new IOException(second + " is where the job itself lies. Choose a folder elsewhere.");
    }
    Openings.get(job);
    try {
      return new Copied(target, copyAll(job, target));
    } catch (java.nio.file.FileSystemException e) {
      throw new IOException(
          "The copy could not be written: "
              + Reasons.of(e)
              + ". Make room there and see that it can be written to, or choose another folder.",
          e);
    }
  }

  private static int copyAll(Path job, Path target) throws IOException {
    int files = 0;
    for (String name : JobFiles.of(job)) {
      byte[] bytes = Files.readAllBytes(job.resolve(name));
      Path copy = target.resolve(name);
      if (isWanted(copy, bytes)) {
        new AtomicFile().write(copy, bytes);
        if (!Arrays.equals(Files.readAllBytes(copy), bytes)) {
          throw new IOException(copy + " reads back otherwise than written. Use another stick.");
        }
        files++;
      }
    }
    return files;
  }

  /** Whether the copy is behind; where it is something else, it is not touched. */
  private static boolean isWanted(Path copy, byte[] bytes) throws IOException {
    if (!Files.exists(copy)) {
      return true;
    }
    byte[] there = Files.readAllBytes(copy);
    int same = Arrays.mismatch(there, bytes);
    if (same == bytes.length) {
      throw new IOException(
          copy
              + " goes further than the job itself: the job here is an older state. The copy was"
              + " left as it is. Go on with it, or choose another folder.");
    }
    if (same >= 0 && same < there.length) {
      throw new IOException(
          copy
              + " is no earlier state of this job: they differ from byte "
              + same
              + " on. It was left as it is. Check both, or choose another folder.");
    }
    return there.length < bytes.length;
  }
}
