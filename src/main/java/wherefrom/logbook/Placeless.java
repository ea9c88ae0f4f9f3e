package wherefrom.logbook;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * Takes out of a JPEG where it was taken. Segments of data about the picture that tell a position
 * leave; which way up the picture is stays (ITU-T T.81; Exif 2.32, JEITA CP-3451).
 */
final class Placeless {
  private static final int MARKER = 0xFF;
  private static final int SCAN = 0xDA;
  private static final int APP1 = 0xE1;
  private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
  private static final byte[] GPS_WORDS = "GPSL".getBytes(StandardCharsets.US_ASCII);
  private static final int GPS = 0x8825;
  private static final int ORIENTATION = 0x0112;
  private static final int ENTRY = 12;
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
    int at = 2;
    while (at + HEAD <= bytes.length && (bytes[at] & 0xFF) == MARKER) {
      int marker = bytes[at + 1] & 0xFF;
      int length = number(at + 2, 2, false);
      if (marker == SCAN || length < 2 || at + 2 + length > bytes.length) {
        break;
      }
      boolean told = marker == APP1 && tellsPlace(at + HEAD, at + 2 + length);
      if (told) {
        changed = true;
        orientation(at + HEAD, at + 2 + length).ifPresent(this::upright);
      } else {
        out.write(bytes, at, 2 + length);
      }
      at += 2 + length;
    }
    out.write(bytes, at, bytes.length - at);
    return changed;
  }

  private boolean tellsPlace(int from, int to) {
    return isExif(from, to) ? entry(from, to, GPS).isPresent() : holds(from, to, GPS_WORDS);
  }

  private boolean isExif(int from, int to) {
    return to - from > EXIF.length + 8
        && Arrays.equals(bytes, from, from + EXIF.length, EXIF, 0, EXIF.length);
  }

  private boolean holds(int from, int to, byte[] words) {
    for (int at = from; at + words.length <= to; at++) {
      if (Arrays.equals(bytes, at, at + words.length, words, 0, words.length)) {
        return true;
      }
    }
    return false;
  }

  /** Where an entry of the first directory begins. */
  private Optional<Integer> entry(int from, int to, int tag) {
    int tiff = from + EXIF.length;
    boolean little = bytes[tiff] == 'I';
    int directory = tiff + number(tiff + 4, 4, little);
    if (directory < tiff || directory + 2 > to) {
      return Optional.empty();
    }
    int count = number(directory, 2, little);
    for (int each = 0; each < count; each++) {
      int at = directory + 2 + each * ENTRY;
      if (at + ENTRY <= to && number(at, 2, little) == tag) {
        return Optional.of(at);
      }
    }
    return Optional.empty();
  }

  private Optional<Integer> orientation(int from, int to) {
    return isExif(from, to)
        ? entry(from, to, ORIENTATION)
            .map(at -> number(at + 8, 2, bytes[from + EXIF.length] == 'I'))
        : Optional.empty();
  }

  private int number(int at, int length, boolean little) {
    int number = 0;
    for (int each = 0; each < length; each++) {
      int index = little ? at + length - 1 - each : at + each;
      number = (number << 8) | (bytes[index] & 0xFF);
    }
    return number;
  }

  /** A segment that says nothing but which way up the picture is. */
  private void upright(int orientation) {
    byte[] tiff = {
      'M',
      'M',
      0,
      42,
      0,
      0,
      0,
      8,
      0,
      1,
      0x01,
      0x12,
      0,
      3,
      0,
      0,
      0,
      1,
      0,
      (byte) orientation,
      0,
      0,
      0,
      0,
      0,
      0
    };
    int length = 2 + EXIF.length + tiff.length;
    out.write(MARKER);
    out.write(APP1);
    out.write(length >> 8);
    out.write(length);
    out.writeBytes(EXIF);
    out.writeBytes(tiff);
  }
}
