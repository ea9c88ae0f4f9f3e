package wherefrom.phone;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketException;
import java.net.SocketTimeoutException;
import java.net.URI;
import java.nio.charset.StandardCharsets;

/** Sends bytes of any kind to the door, as no browser would. */
final class RawCaller implements AutoCloseable {
  private static final int WAIT_MS = 8_000;
  private static final int TRICKLE_MS = 40;

  private final Socket socket;

  RawCaller(String address) throws IOException {
    URI at = URI.create(address);
    socket = new Socket();
    socket.connect(new InetSocketAddress(at.getHost(), at.getPort()), WAIT_MS);
    socket.setSoTimeout(WAIT_MS);
  }

  RawCaller send(String text) throws IOException {
    OutputStream out = socket.getOutputStream();
    out.write(text.getBytes(StandardCharsets.ISO_8859_1));
    out.flush();
    return this;
  }

  RawCaller send(byte[] bytes) throws IOException {
    OutputStream out = socket.getOutputStream();
    out.write(bytes);
    out.flush();
    return this;
  }

  /**
   * Sends the same again and again, a little slower than nothing, until it is answered.
   *
   * @param most how many times; that is too few for what was promised
   * @return the status of the answer; 0 where the connection was closed without one
   */
  int trickle(String text, int most) throws IOException {
    socket.setSoTimeout(TRICKLE_MS);
    try {
      for (int sent = 0; sent < most; sent++) {
        send(text);
        try {
          return status();
        } catch (SocketTimeoutException notYet) {
          // The next one.
        }
      }
    } catch (SocketException closed) {
      return 0;
    }
    throw new AssertionError("not cut off after " + most);
  }

  /** Nothing more is sent; an answer can be heard yet. */
  void endOfWords() throws IOException {
    socket.shutdownOutput();
  }

  /** The status of the answer; 0 where the connection was closed without one. */
  int status() throws IOException {
    InputStream in = socket.getInputStream();
    StringBuilder line = new StringBuilder();
    try {
      for (int read = in.read(); read >= 0 && read != '\r'; read = in.read()) {
        line.append((char) read);
      }
    } catch (SocketException reset) {
      return 0;
    }
    return line.length() < 12 ? 0 : Integer.parseInt(line.substring(9, 12));
  }

  @Override
  public void close() throws IOException {
    socket.close();
  }
}
