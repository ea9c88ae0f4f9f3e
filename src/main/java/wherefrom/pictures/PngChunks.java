package wherefrom.pictures;

import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;

/** The chunks of a PNG file, one after the other (W3C PNG, third edition, 5.3). */
final class PngChunks {
  private static final int IHDR = 0x49484452;
  private static final int IDAT = 0x49444154;
  private static final int IEND = 0x49454E44;
  private static final int CRC = 4;

  /** Colour profiles and thumbnails stay far below; compressed text grows a thousandfold. */
  private static final long MOST_BALLAST = 1_000_000;

  private final DataInputStream in;

  PngChunks(DataInputStream in) {
    this.in = in;
  }

  /** Refuses a picture that is too large or carries too much besides. */
  void check() throws IOException {
    long ballast = 0;
    int type = 0;
    while (type != IEND) {
      long length = in.readInt() & 0xFFFFFFFFL;
      type = in.readInt();
      if (type == IHDR) {
        PictureGate.requireSize(in.readInt() & 0xFFFFFFFFL, in.readInt() & 0xFFFFFFFFL);
        length -= 8;
      } else if (type != IDAT) {
        ballast += length;
      }
      if (ballast > MOST_BALLAST) {
        throw PictureGate.ballast(ballast);
      }
      skip(length + CRC);
    }
  }

  private void skip(long bytes) throws IOException {
    long left = bytes;
    while (left > 0) {
      long skipped = in.skip(left);
      if (skipped <= 0) {
        in.readByte();
        skipped = 1;
      }
      left -= skipped;
    }
    if (left < 0) {
      throw new EOFException();
    }
  }
}
