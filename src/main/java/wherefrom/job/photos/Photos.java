package wherefrom.job.photos;

import java.io.IOException;
import java.nio.file.Path;

/** The photographs of a job, each file named by its content. */
public interface Photos {
  /**
   * Copies a picture file into the job and returns the name to keep in the logbook.
   *
   * @throws IOException with a plain sentence when it is no picture or cannot be copied
   */
  String add(Path jobFolder, Path picture) throws IOException;

  /**
   * The name that a picture file would be kept under; nothing is copied.
   *
   * @throws IOException with a plain sentence when it is none that can be kept
   */
  String name(Path picture) throws IOException;

  /** Where a kept photograph lies. */
  Path locate(Path jobFolder, String name);
}
