package wherefrom.job.ports;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** A whole job, logbook and photographs, as one file and back. */
public interface Archives {
  /**
   * Writes a job to one file, which must not exist.
   *
   * @throws IOException with a plain sentence when it cannot be written
   */
  void export(Path jobFolder, Path file) throws IOException;

  /**
   * Brings a job back as a new folder on a shelf and returns the folder. Nothing is overwritten.
   *
   * @throws IOException with a plain sentence when the file is no whole job
   */
  Path restore(Path file, Path shelfFolder) throws IOException;

  /**
   * The job on a shelf that an exported file is a copy of; empty where it is not there.
   *
   * @throws IOException with a plain sentence when the file is no exported job
   */
  Optional<Path> findThere(Path file, Path shelfFolder) throws IOException;

  /**
   * The logbook of a job as text, line by line as it lies there, the names of its files between.
   *
   * @throws IOException when it cannot be read
   */
  String text(Path jobFolder) throws IOException;
}
