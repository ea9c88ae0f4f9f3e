package wherefrom.logbook;

import java.util.Optional;

/**
 * The first directory of what a camera tells about a picture (Exif 2.32, JEITA CP-3451, 4.6): only
 * which way up it is, and whether there is a position.
 */
final class Tiff {
  private static final int GPS = 0x8825;
  private static final int ORIENTATION = 0x0112;
  private static final int ENTRY = 12;
  private static final int HEAD = 8;

  private final byte[] bytes;
  private final int from;
  private final int to;

  /**
   * @param bytes a file's
   * @param from where the byte order stands
   * @param to the end of what is told
   */
  Tiff(byte[] bytes, int from, int to) {
    this.bytes = bytes;
    this.from = from;
    this.to = to;
  }

  boolean tellsPlace() {
    return entry(GPS).isPresent();
  }

  /** From 1 to 8; empty where it is not told. */
  Optional<Integer> orientation() {
    return entry(ORIENTATION).map(at -> number(at + 8, 2));
  }

  /** Where an entry of the directory begins. */
  private Optional<Integer> entry(int tag) {
    if (to - from <= HEAD) {
      return Optional.empty();
    }
    int directory = from + number(from + 4, 4);
    if (directory < from || directory + 2 > to) {
      return Optional.empty();
    }
    int count = number(directory, 2);
    for (int each = 0; each < count; each++) {
      int at = directory + 2 + each * ENTRY;
      if (at + ENTRY <= to && number(at, 2) == tag) {
        return Optional.of(at);
      }
    }
    return Optional.empty();
  }

  private int number(int at, int length) {
    boolean little = bytes[from] == 'I';
    int number = 0;
    for (int each = 0; each < length; each++) {
      int index = little ? at + length - 1 - each : at + each;
      number = (number << 8) | (bytes[index] & 0xFF);
    }
    return number;
  }

  /** Says nothing but which way up the picture is. */
  static byte[] upright(int orientation) {
    byte[] tiff = new byte[26];
    tiff[0] = 'M';
    tiff[1] = 'M';
    tiff[3] = 42;
    tiff[7] = HEAD;
    tiff[9] = 1;
    tiff[10] = ORIENTATION >> 8;
    tiff[11] = ORIENTATION & 0xFF;
    tiff[13] = 3;
    tiff[17] = 1;
    tiff[19] = (byte) orientation;
    return tiff;
  }
}
