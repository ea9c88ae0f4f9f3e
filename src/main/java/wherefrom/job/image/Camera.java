package wherefrom.job.image;

import java.nio.file.Path;

/**
 * A camera that can be opened.
 *
 * @param id what the system calls it
 * @param title what a person reads
 */
public record Camera(String id, String title) {
  /** A recorded clip, from its first frame to its last. */
  public static Camera ofClip(Path file) {
    return new Camera("file:" + file.toAbsolutePath(), String.valueOf(file.getFileName()));
  }
}
