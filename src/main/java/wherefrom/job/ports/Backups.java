package wherefrom.job.ports;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

/** A second copy of a job, on a USB drive or another disk, made after each sitting. */
public interface Backups {

  /**
   * What was copied.
   *
   * @param folder the copy
   * @param files how many files were written; the others were there already
   * @param upTo the sequence of the last entry that the copy holds; 0 for none
   * @param damage a sentence for each damage of the job; empty when it is sound. The copy of a
   *     damaged logbook lies in a folder of its own, and the older copy is as it was
   * @param settled whether the system said that everything is on the disk that holds the copy, so
   *     that it can be pulled out
   */
  record Copied(Path folder, int files, long upTo, List<String> damage, boolean settled) {
    public Copied {
      damage = List.copyOf(damage);
    }
  }

  /**
   * Brings the copy of a job up to date and reads it back.
   *
   * @param second the folder that holds the copies
   * @throws IOException with a plain sentence when it cannot be written, or when what lies there is
   *     no earlier state of this job; it is then left as it is
   */
  Copied copy(Path jobFolder, Path second) throws IOException;

  /** Removes what a kill left behind among the copies, where it is old and surely ours. */
  default void tidy(Path second, Instant now) {}
}
