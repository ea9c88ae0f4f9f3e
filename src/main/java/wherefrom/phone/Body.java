package wherefrom.phone;

import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * What comes with a request: counted and timed while it comes, never decoded before it is whole.
 */
final class Body {
  private static final int PIECE = 16_384;
  private static final int TOO_LARGE = 413;
  private static final int TOO_SLOW = 408;
  private static final int BAD = 400;

  private final InputStream in;
  private final BooleanSupplier late;

  /**
   * @param late whether it has taken too long
   */
  Body(InputStream in, BooleanSupplier late) {
    this.in = in;
    this.late = late;
  }

  /**
   * What the head says of its length, as far as it says so.
   *
   * @throws Refused where it is more than may come, or no number
   */
  static void announced(List<String> lengths, long most) throws Refused {
    for (String length : lengths) {
      if (!length.matches("[0-9]{1,18}")) {
        throw new Refused(BAD, "That is not understood here.");
      }
      if (Long.parseLong(length) > most) {
        throw tooLarge(most);
      }
    }
  }

  /**
   * Whether all came that was announced: a part of a picture is none.
   *
   * @throws IOException where the connection ended before
   */
  static void requireWhole(List<String> lengths, long count) throws IOException {
    for (String length : lengths) {
      if (Long.parseLong(length) != count) {
        throw new EOFException("of " + length + " bytes " + count + " came");
      }
    }
  }

  /** What came cannot be put down here. */
  static Refused noRoom() {
    return new Refused(Refused.NO_ROOM, "Not taken in. Is the computer's disk full?");
  }

  private static Refused tooLarge(long most) {
    String words = most < 1_000_000 ? "That is too long." : "More than 25 MB is too much.";
    return new Refused(TOO_LARGE, words + " Nothing was done.");
  }

  byte[] words(int most) throws IOException, Refused {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    copy(all, most);
    return all.toByteArray();
  }

  /**
   * Copies it.
   *
   * @return how many bytes
   * @throws IOException where the connection is lost
   * @throws Refused where more come than may, or too slowly, or there is no room for them
   */
  long copy(OutputStream out, long most) throws IOException, Refused {
    byte[] piece = new byte[PIECE];
    long count = 0;
    for (int read = in.read(piece); read >= 0; read = in.read(piece)) {
      count += read;
      if (count > most) {
        throw tooLarge(most);
      }
      if (late.getAsBoolean()) {
        throw new Refused(TOO_SLOW, "That took too long. Nothing was done.");
      }
      put(out, piece, read);
    }
    return count;
  }

  /** The connection is well: it is not the phone that has gone. */
  private static void put(OutputStream out, byte[] piece, int length) throws Refused {
    try {
      out.write(piece, 0, length);
    } catch (IOException full) {
      throw noRoom();
    }
  }
}
