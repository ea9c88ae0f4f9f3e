package wherefrom.job.photos;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;

/** The photographs of a job, each file named by its content. */
public interface Photos {
  /**
   * Copies a picture file into the job and returns the name to keep in the logbook.
   *
   * @throws IOException with a plain sentence when it is no picture or cannot be copied
   */
  default String add(Path jobFolder, Path picture) throws IOException {
    return add(jobFolder, picture, Set.of());
  }

  /**
   * Copies a picture file into the job, or puts it back there.
   *
   * @param named the names that the logbook has: a picture that is one of them keeps that name
   * @return the name to keep in the logbook
   * @throws IOException with a plain sentence when it is no picture or cannot be copied
   */
  String add(Path jobFolder, Path picture, Set<String> named) throws IOException;

  /**
   * The names that a picture file may have in a job, the one that it would be given today first;
   * nothing is copied.
   *
   * @throws IOException with a plain sentence when it is none that can be kept
   */
  Set<String> names(Path picture) throws IOException;

  /** Whether a photograph lies in the job, whole. */
  boolean isThere(Path jobFolder, String name) throws IOException;

  /** Where a kept photograph lies. */
  Path locate(Path jobFolder, String name);
}
