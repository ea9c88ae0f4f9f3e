package wherefrom.job;

import java.io.IOException;
import java.nio.file.Path;

/** A second copy of a job, on a stick or another disk, made after each sitting. */
public interface Backups {

  /**
   * What was copied.
   *
   * @param folder the copy
   * @param files how many files were written; the others were there already
   */
  record Copied(Path folder, int files) {}

  /**
   * Brings the copy of a job up to date and reads it back.
   *
   * @param second the folder that holds the copies
   * @throws IOException with a plain sentence when it cannot be written, or when what lies there is
   *     no earlier state of this job; it is then left as it is
   */
  Copied copy(Path jobFolder, Path second) throws IOException;
}
