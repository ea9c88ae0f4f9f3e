package wherefrom.logbook;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.List;

/** What the logbook needs of a disk; tests put one in between that fails. */
interface LogDisk {

  /** A file that only grows. */
  interface Output extends Closeable {
    /** Writes some of the bytes, perhaps not all, and says how many. */
    int write(ByteBuffer bytes) throws IOException;

    /** Returns only when everything that was written is on disk. */
    void force() throws IOException;
  }

  /** Every file in a folder. */
  List<Path> list(Path folder) throws IOException;

  byte[] read(Path file) throws IOException;

  /** A file that must not exist yet. */
  Output create(Path file) throws IOException;

  /** A file that exists, to go on at its end. */
  Output append(Path file) throws IOException;

  void delete(Path file) throws IOException;

  /** Returns only when the names of the files in the folder are on disk. */
  void forceFolder(Path folder) throws IOException;
}
