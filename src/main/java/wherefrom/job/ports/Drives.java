package wherefrom.job.ports;

import java.nio.file.Path;
import java.util.List;

/** The drives that are plugged in: USB drives, memory cards, other disks. */
public interface Drives {

  /**
   * A drive that can be written to.
   *
   * @param folder where its files lie
   * @param freeBytes the room that is left on it
   */
  record Drive(Path folder, long freeBytes) {}

  /** No drive is plugged in, and every folder lies on a disk of its own. */
  Drives NONE =
      new Drives() {
        @Override
        public List<Drive> list() {
          return List.of();
        }

        @Override
        public boolean isSameDisk(Path one, Path other) {
          return false;
        }
      };

  /** Those that are there now. */
  List<Drive> list();

  /** Whether two folders lie on one disk, so that they are lost together. */
  boolean isSameDisk(Path one, Path other);
}
