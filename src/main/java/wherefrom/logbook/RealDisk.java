package wherefrom.logbook;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Stream;
import wherefrom.files.AtomicFile;
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
    return Files.readAllBytes(file);
  }

  @Override
  public Output create(Path file) throws IOException {
    return new ChannelOutput(open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE));
  }

  @Override
  public Output append(Path file) throws IOException {
    return new ChannelOutput(open(file, StandardOpenOption.APPEND));
  }

  private static FileChannel open(Path file, OpenOption... how) throws IOException {
    return FileChannel.open(file, how);
  }

  @Override
  public void delete(Path file) throws IOException {
    Files.deleteIfExists(file);
  }

  @Override
  public void forceFolder(Path folder) {
    AtomicFile.forceFolder(folder);
  }

  private record ChannelOutput(FileChannel channel) implements Output {
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
      channel.close();
    }
  }
}
