package wherefrom.logbook;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The logbook files that this program holds locked. On POSIX systems a program loses its locks on a
 * file when it closes any channel to it: so what is read of a held file is read through the channel
 * that holds it, and other channels to it are closed only when it is let go.
 */
final class HeldFiles {
  private static final Map<Object, HeldFiles> HELD = new ConcurrentHashMap<>();

  private final FileChannel channel;
  private final List<FileChannel> later = Collections.synchronizedList(new ArrayList<>());

  private HeldFiles(FileChannel channel) {
    this.channel = channel;
  }

  /** What tells a file from every other; its place where the file system has no such key. */
  static Object key(Path file) throws IOException {
    Object key = Files.readAttributes(file, BasicFileAttributes.class).fileKey();
    return key == null ? file.toAbsolutePath().normalize() : key;
  }

  static void hold(Object key, FileChannel channel) {
    HELD.put(key, new HeldFiles(channel));
  }

  static void letGo(Object key) throws IOException {
    HeldFiles held = HELD.remove(key);
    if (held != null) {
      for (FileChannel other : held.later) {
        other.close();
      }
      held.channel.close();
    }
  }

  /** Closes a channel to a file, or has it closed when the file is let go. */
  static void close(Object key, FileChannel channel) throws IOException {
    HeldFiles held = HELD.get(key);
    if (held == null) {
      channel.close();
    } else {
      held.later.add(channel);
    }
  }

  private static Optional<FileChannel> find(Path file) throws IOException {
    return HELD.isEmpty()
        ? Optional.empty()
        : Optional.ofNullable(HELD.get(key(file))).map(held -> held.channel);
  }

  /** All bytes of a file. */
  static byte[] read(Path file) throws IOException {
    Optional<FileChannel> held = find(file);
    if (held.isEmpty()) {
      return Files.readAllBytes(file);
    }
    long size = held.get().size();
    return read(held.get(), 0, Math.toIntExact(size));
  }

  /** The bytes of a file from a place on, as many as there are of those that are wanted. */
  static byte[] read(Path file, long from, int wanted) throws IOException {
    Optional<FileChannel> held = find(file);
    if (held.isPresent()) {
      return read(held.get(), from, wanted);
    }
    try (FileChannel opened = FileChannel.open(file)) {
      return read(opened, from, wanted);
    }
  }

  private static byte[] read(FileChannel channel, long from, int wanted) throws IOException {
    int there = (int) Math.max(0, Math.min(wanted, channel.size() - from));
    ByteBuffer bytes = ByteBuffer.allocate(there);
    while (bytes.hasRemaining() && channel.read(bytes, from + bytes.position()) >= 0) {
      // Until all of it is there, or the file has become shorter meanwhile.
    }
    byte[] read = new byte[bytes.position()];
    bytes.flip().get(read);
    return read;
  }
}
