package wherefrom.logbook;

import java.nio.file.Path;

/** Brings everything of a file system to its disk: more than its files alone. */
@FunctionalInterface
interface Settling {

  /** Whether the system said that all of it is there. */
  boolean settle(Path folder);
}
