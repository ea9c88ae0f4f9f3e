package wherefrom.files;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** A stream that whoever fills it cannot close. */
final class Unclosed extends FilterOutputStream {
  Unclosed(OutputStream stream) {
    super(stream);
  }

  @Override
  public void write(byte[] bytes, int from, int length) throws IOException {
    out.write(bytes, from, length);
  }

  @Override
  public void close() throws IOException {
    flush();
  }
}
