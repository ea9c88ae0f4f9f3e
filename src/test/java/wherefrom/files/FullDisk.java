package wherefrom.files;

import java.io.IOException;
import java.io.OutputStream;

/** A disk that takes so many bytes and no more. */
public final class FullDisk {
  private FullDisk() {}

  /** Files on a disk with so much room for each. */
  public static AtomicFile withRoomFor(int bytes) {
    return new AtomicFile(out -> new Limited(out, bytes));
  }

  private static final class Limited extends OutputStream {
    private final OutputStream out;
    private int room;

    Limited(OutputStream out, int room) {
      this.out = out;
      this.room = room;
    }

    @Override
    public void write(int value) throws IOException {
      if (room == 0) {
        throw new IOException("No space left on device");
      }
      room--;
      out.write(value);
    }
  }
}
