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

  /**
   * What a path names at this moment.
   *
   * @param key tells the file from every other, whatever its name; the same for all where the file
   *     system gives none
   * @param size in bytes
   * @param end the chain sum of its last line, as far as that was looked at; empty where the file
   *     does not end with a line end
   */
  record Named(Object key, long size, String end) {

    /**
     * @param tail its last bytes
     */
    static Named of(Object key, long size, byte[] tail) {
      boolean ended = tail.length > 0 && tail[tail.length - 1] == '\n';
      return new Named(key, size, ended ? Sums.chain(tail, 0, tail.length - 1) : "");
    }
  }

  /** Every file in a folder. */
  List<Path> list(Path folder) throws IOException;

  byte[] read(Path file) throws IOException;

  /**
   * Looks at the file that the path names now, whichever is open.
   *
   * @param tail how many of its last bytes to look at, fewer where it is shorter
   */
  Named look(Path file, int tail) throws IOException;

  /** A file that must not exist yet. */
  Output create(Path file) throws IOException;

  /** A file that exists, to go on at its end. */
  Output append(Path file) throws IOException;

  /** Gives a file another name in its folder, in one step; nothing has that name yet. */
  void rename(Path from, Path to) throws IOException;

  void delete(Path file) throws IOException;

  /** Returns only when the names of the files in the folder are on disk. */
  void forceFolder(Path folder) throws IOException;
}
