package wherefrom.phone;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;

/** Sends bytes of any kind to the door, as no browser would. */
final class RawCaller implements AutoCloseable {
  private static final int WAIT_MS = 8_000;

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
    } catch (java.net.SocketException reset) {
      return 0;
    }
    return line.length() < 12 ? 0 : Integer.parseInt(line.substring(9, 12));
  }

  @Override
  public void close() throws IOException {
    socket.close();
  }
}
