package wherefrom.logbook;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Stream;
import wherefrom.files.Folders;
import wherefrom.files.Incoming;

/** The disk of this machine. */
final class RealDisk implements LogDisk {
  @Override
  public List<Path> list(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      // A pipe has nothing in it and is waited for without end.
      return files.filter(file -> !Incoming.isSpecial(file)).toList();
    }
  }

  @Override
  public byte[] read(Path file) throws IOException {
    return HeldFiles.read(file);
  }

  @Override
  public Named look(Path file, int tail) throws IOException {
    Object key = HeldFiles.key(file);
    long size = Files.size(file);
    return Named.of(key, size, HeldFiles.read(file, Math.max(0, size - tail), tail));
  }

  @Override
  public Output create(Path file) throws IOException {
    return output(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.APPEND);
  }

  @Override
  public Output append(Path file) throws IOException {
    return output(file, StandardOpenOption.APPEND);
  }

  private static Output output(Path file, OpenOption... how) throws IOException {
    FileChannel channel = FileChannel.open(file, how);
    return new ChannelOutput(HeldFiles.key(file), channel);
  }

  @Override
  public void rename(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
  }

  @Override
  public void delete(Path file) throws IOException {
    Files.deleteIfExists(file);
  }

  @Override
  public void forceFolder(Path folder) throws IOException {
    Folders.force(folder);
  }

  private record ChannelOutput(Object key, FileChannel channel) implements Output {
    @Override
    public int write(ByteBuffer bytes) throws IOException {
      return channel.write(bytes);
    }

    @Override
    public void force() throws IOException {
      channel.force(true);
    }

    @Override
    public void close() throws IOException {
      HeldFiles.close(key, channel);
    }
  }
}
