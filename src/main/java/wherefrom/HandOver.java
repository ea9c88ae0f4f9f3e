package wherefrom;

import java.io.IOException;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;

/**
 * Hands files that are opened by double click to the window that is open, in place of a second one.
 * The window listens at a socket in a folder of the person's own; where that cannot be, as where
 * the folder's path is longer than sockets allow, each start opens a window of its own.
 */
final class HandOver {
  private static final String NAME = "window.socket";
  private static final int MOST_BYTES = 65_536;
  private static final int TAKEN = 1;
  private static final int WAIT_SECONDS = 3;

  private final Path socket;

  /**
   * @param folder holds the socket; may not exist yet
   */
  HandOver(Path folder) {
    this.socket = folder.resolve(NAME);
  }

  /** Whether an open window has taken these files. */
  boolean give(List<Path> files) {
    if (files.isEmpty() || !Files.exists(socket)) {
      return false;
    }
    CompletableFuture<Boolean> given = CompletableFuture.supplyAsync(() -> tell(files));
    try {
      return given.get(WAIT_SECONDS, TimeUnit.SECONDS);
    } catch (ExecutionException | TimeoutException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private boolean tell(List<Path> files) {
    List<String> lines = files.stream().map(file -> file.toAbsolutePath().toString()).toList();
    byte[] bytes = String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
    try (SocketChannel window = SocketChannel.open(UnixDomainSocketAddress.of(socket))) {
      ByteBuffer all = ByteBuffer.wrap(bytes);
      while (all.hasRemaining()) {
        window.write(all);
      }
      window.shutdownOutput();
      return Channels.newInputStream(window).read() == TAKEN;
    } catch (IOException | UnsupportedOperationException e) {
      // A window that was killed leaves its socket behind.
      return false;
    }
  }

  /**
   * Takes files from now on, until the program ends; does nothing where another window does.
   *
   * @param taker is told the files on a thread of its own
   */
  void take(Consumer<List<Path>> taker) {
    try {
      if (!isAnswered()) {
        ServerSocketChannel window = open();
        Thread listening = new Thread(() -> listen(window, taker), "handed-over");
        listening.setDaemon(true);
        listening.start();
      }
    } catch (IOException | UnsupportedOperationException e) {
      // A second start opens a second window, then.
    }
  }

  private boolean isAnswered() {
    try (SocketChannel other = SocketChannel.open(UnixDomainSocketAddress.of(socket))) {
      return other.isConnected();
    } catch (IOException | UnsupportedOperationException e) {
      return false;
    }
  }

  private ServerSocketChannel open() throws IOException {
    Files.createDirectories(socket.getParent());
    Files.deleteIfExists(socket);
    ServerSocketChannel window = ServerSocketChannel.open(StandardProtocolFamily.UNIX);
    window.bind(UnixDomainSocketAddress.of(socket));
    socket.toFile().deleteOnExit();
    return window;
  }

  private static void listen(ServerSocketChannel window, Consumer<List<Path>> taker) {
    while (window.isOpen()) {
      try (SocketChannel other = window.accept()) {
        byte[] bytes = Channels.newInputStream(other).readNBytes(MOST_BYTES);
        List<Path> files = files(new String(bytes, StandardCharsets.UTF_8));
        if (!files.isEmpty()) {
          taker.accept(files);
          other.write(ByteBuffer.wrap(new byte[] {TAKEN}));
        }
      } catch (IOException | InvalidPathException e) {
        // Whoever it was got no answer, and opens a window.
      }
    }
  }

  private static List<Path> files(String lines) {
    return lines.lines().map(Path::of).filter(Path::isAbsolute).toList();
  }
}
