package wherefrom.server;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/** The way between benches and server, which can be cut, slowed, and lose the server's answers. */
final class Crossing implements AutoCloseable {
  private static final int PATIENCE_S = 20;

  private final ServerSocket door;
  private final int server;
  private final List<Socket> open = new CopyOnWriteArrayList<>();
  private volatile boolean closed;
  private volatile boolean deaf;
  private volatile byte[] last = {};
  private final List<Socket> stranded = new CopyOnWriteArrayList<>();
  private volatile int delayMs;
  private final Semaphore unheard = new Semaphore(0);

  Crossing(int server) {
    this.server = server;
    try {
      this.door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    start(this::accept);
  }

  int port() {
    return door.getLocalPort();
  }

  /** From now on nobody comes through; who is on the way is thrown back. */
  void close(boolean shut) {
    closed = shut;
    if (shut) {
      cut();
    }
  }

  /** Whoever is on the way is thrown back. */
  void cut() {
    open.forEach(Crossing::end);
    open.clear();
  }

  /** Whoever is on the way is thrown back, and the server does not notice. */
  void strand() {
    stranded.addAll(open);
    open.clear();
    stranded.stream().filter(each -> each.getLocalPort() == port()).forEach(Crossing::end);
  }

  /** Now it notices. */
  void unstrand() {
    stranded.forEach(Crossing::end);
  }

  /** Whether what the server says goes nowhere: it does what it is asked, and nobody hears. */
  void deafen(boolean now) {
    deaf = now;
  }

  /** Nobody hears from the moment on at which the server is told something with these words. */
  void deafenAt(String words) {
    last = words.getBytes(StandardCharsets.UTF_8);
  }

  private boolean isLast(byte[] said, int length) {
    byte[] words = last;
    boolean found = false;
    for (int at = 0; words.length > 0 && !found && at <= length - words.length; at++) {
      found = Arrays.equals(said, at, at + words.length, words, 0, words.length);
    }
    return found;
  }

  /** Waits until something that the server said went nowhere. */
  void awaitUnheard() throws InterruptedException {
    if (!unheard.tryAcquire(PATIENCE_S, TimeUnit.SECONDS)) {
      throw new AssertionError("the server said nothing");
    }
  }

  /** From now on all takes so much longer each way. */
  void slow(int millis) {
    delayMs = millis;
  }

  private static void start(Runnable work) {
    Thread thread = new Thread(work, "crossing");
    thread.setDaemon(true);
    thread.start();
  }

  private void accept() {
    while (!door.isClosed()) {
      try {
        Socket bench = door.accept();
        if (closed) {
          end(bench);
          continue;
        }
        Socket far = new Socket(InetAddress.getLoopbackAddress(), server);
        bench.setTcpNoDelay(true);
        far.setTcpNoDelay(true);
        open.add(bench);
        open.add(far);
        start(() -> carry(bench, far, false));
        start(() -> carry(far, bench, true));
      } catch (IOException e) {
        // The server is down: who came is thrown back, the next may come.
        cut();
      }
    }
  }

  private void carry(Socket from, Socket to, boolean answers) {
    byte[] buffer = new byte[65_536];
    try {
      InputStream in = from.getInputStream();
      OutputStream out = to.getOutputStream();
      for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
        if (delayMs > 0) {
          // No test waits here: this is how long the way takes.
          Thread.sleep(delayMs);
        }
        if (!answers && isLast(buffer, read)) {
          last = new byte[0];
          deaf = true;
        }
        if (answers && deaf) {
          unheard.release();
        } else {
          out.write(buffer, 0, read);
        }
      }
    } catch (IOException | InterruptedException e) {
      // Cut.
    }
    if (stranded.contains(to)) {
      return;
    }
    end(from);
    end(to);
    open.remove(from);
    open.remove(to);
  }

  private static void end(Socket socket) {
    try {
      socket.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    try {
      door.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    cut();
  }
}
