package wherefrom.logbook;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * Takes out of a JPEG where it was taken. Segments of data about the picture that tell a position
 * leave, and so does all behind its end: phones add films and further pictures there, each with a
 * position of its own. Which way up the picture is stays (ITU-T T.81; Exif 2.32, JEITA CP-3451).
 */
final class Placeless {
  private static final int MARKER = 0xFF;
  private static final int SCAN = 0xDA;
  private static final int END = 0xD9;
  private static final int FIRST_ALONE = 0xD0;
  private static final int LAST_ALONE = 0xD7;
  private static final int APP1 = 0xE1;
  private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
  private static final byte[] GPS_WORDS = "GPSL".getBytes(StandardCharsets.US_ASCII);
  private static final int HEAD = 4;

  private final byte[] bytes;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  private Placeless(byte[] bytes) {
    this.bytes = bytes;
  }

  /** The same picture; the very bytes where no position is in them. */
  static byte[] of(byte[] jpeg) {
    Placeless picture = new Placeless(jpeg);
    return picture.walk() ? picture.out.toByteArray() : jpeg;
  }

  /** Copies segment by segment; false where nothing was left out, or the file is odd. */
  private boolean walk() {
    boolean changed = false;
    out.write(bytes, 0, 2);
    int at = filled(2);
    while (isSegment(at) && (bytes[at + 1] & 0xFF) != SCAN) {
      int next = at + 2 + length(at);
      if ((bytes[at + 1] & 0xFF) == APP1 && tellsPlace(at + HEAD, next)) {
        changed = true;
        tiff(at + HEAD, next).flatMap(Tiff::orientation).ifPresent(this::upright);
      } else {
        out.write(bytes, at, next - at);
      }
      at = filled(next);
    }
    int end = end(at);
    out.write(bytes, at, end - at);
    return changed || end < bytes.length;
  }

  /** Behind the filling: any number of FF may stand before a marker (ITU-T T.81, B.1.1.2). */
  private int filled(int from) {
    int at = from;
    while (at + 1 < bytes.length
        && (bytes[at] & 0xFF) == MARKER
        && (bytes[at + 1] & 0xFF) == MARKER) {
      at++;
    }
    return at;
  }

  /** Whether a whole segment stands there. */
  private boolean isSegment(int at) {
    return at + HEAD <= bytes.length
        && (bytes[at] & 0xFF) == MARKER
        && length(at) >= 2
        && at + 2 + length(at) <= bytes.length;
  }

  private int length(int at) {
    return ((bytes[at + 2] & 0xFF) << 8) | (bytes[at + 3] & 0xFF);
  }

  /** Where the picture ends that has its first scan here; the file's end where nothing says so. */
  private int end(int scan) {
    int at = scan;
    while (at + 1 < bytes.length) {
      int marker = bytes[at + 1] & 0xFF;
      if ((bytes[at] & 0xFF) != MARKER || marker == 0 || isAlone(marker)) {
        at++;
      } else if (marker == END) {
        return at + 2;
      } else {
        at = isSegment(at) ? at + 2 + length(at) : at + 1;
      }
    }
    return bytes.length;
  }

  /** Markers within a scan, and the filling before one. */
  private static boolean isAlone(int marker) {
    return marker == MARKER || (marker >= FIRST_ALONE && marker <= LAST_ALONE);
  }

  private boolean tellsPlace(int from, int to) {
    return tiff(from, to).map(Tiff::tellsPlace).orElseGet(() -> holds(bytes, from, to, GPS_WORDS));
  }

  private Optional<Tiff> tiff(int from, int to) {
    boolean exif =
        to - from > EXIF.length + 8
            && Arrays.equals(bytes, from, from + EXIF.length, EXIF, 0, EXIF.length);
    return exif ? Optional.of(new Tiff(bytes, from + EXIF.length, to)) : Optional.empty();
  }

  /** Whether these bytes stand somewhere between two places. */
  private static boolean holds(byte[] bytes, int from, int to, byte[] words) {
    for (int at = from; at + words.length <= to; at++) {
      if (Arrays.equals(bytes, at, at + words.length, words, 0, words.length)) {
        return true;
      }
    }
    return false;
  }

  private void upright(int orientation) {
    byte[] tiff = Tiff.upright(orientation);
    int length = 2 + EXIF.length + tiff.length;
    out.write(MARKER);
    out.write(APP1);
    out.write(length >> 8);
    out.write(length);
    out.writeBytes(EXIF);
    out.writeBytes(tiff);
  }
}
