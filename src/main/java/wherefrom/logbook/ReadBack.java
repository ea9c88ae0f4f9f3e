package wherefrom.logbook;

import com.sun.nio.file.ExtendedOpenOption;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Optional;

/**
 * Reads a copy back from its disk. The file is opened anew and, where the file system can, read
 * past the system's memory, which would only give back what was just put into it.
 */
final class ReadBack {
  private static final int BLOCKS = 64;

  private ReadBack() {}

  /** Whether a file holds exactly these bytes. */
  static boolean holds(Path file, byte[] bytes) throws IOException {
    Optional<FileChannel> direct = findDirect(file);
    if (direct.isEmpty()) {
      return Arrays.equals(Files.readAllBytes(file), bytes);
    }
    int block = Math.toIntExact(Files.getFileStore(file).getBlockSize());
    try (FileChannel channel = direct.get()) {
      return holds(channel, block, bytes);
    }
  }

  /** A channel past the system's memory; empty where the file system has none. */
  private static Optional<FileChannel> findDirect(Path file) {
    try {
      return Optional.of(
          FileChannel.open(file, StandardOpenOption.READ, ExtendedOpenOption.DIRECT));
    } catch (IOException | UnsupportedOperationException e) {
      return Optional.empty();
    }
  }

  private static boolean holds(FileChannel channel, int block, byte[] bytes) throws IOException {
    ByteBuffer room = ByteBuffer.allocateDirect(block * (BLOCKS + 1)).alignedSlice(block);
    room.limit(block * BLOCKS);
    int at = 0;
    while (at < bytes.length) {
      room.rewind();
      int read = channel.read(room, at);
      boolean endsEarly = read % block != 0 && at + read < bytes.length;
      if (read <= 0 || read > bytes.length - at || endsEarly) {
        return false;
      }
      byte[] some = new byte[read];
      room.rewind();
      room.get(some);
      if (!Arrays.equals(some, 0, read, bytes, at, at + read)) {
        return false;
      }
      at += read;
    }
    return channel.size() == bytes.length;
  }
}
