package wherefrom.logbook;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;

/**
 * What a photograph says of itself that went out without its position: under which sum the logbook
 * names it, and the sum of all its bytes but these. In a JPEG it is a comment (ITU-T T.81, B.2.4.5)
 * behind the first application segments, in a PNG a private chunk behind the first.
 */
final class PlaceMark {
  private static final String WORDS = "Wherefrom: position left out of %s; sum %s";
  private static final Pattern READ =
      Pattern.compile("Wherefrom: position left out of ([0-9a-f]{64}); sum ([0-9a-f]{64})");
  private static final int LENGTH = String.format(WORDS, "0".repeat(64), "0".repeat(64)).length();
  private static final int COMMENT = 0xFE;
  private static final int FIRST_APP = 0xE0;
  private static final int LAST_APP = 0xEF;
  private static final int JPEG_HEAD = 4;
  private static final int PNG_FIRST = 33;
  private static final int PNG_HEAD = 8;
  private static final int PNG_SUM = 4;
  private static final String CHUNK = "wfPl";

  private PlaceMark() {}

  /**
   * The picture with the mark.
   *
   * @param placeless a whole picture
   * @param name the sum of the bytes that the logbook names
   */
  static byte[] put(byte[] placeless, String name) {
    String words = String.format(WORDS, name, Sums.digest(placeless));
    byte[] mark = mark(placeless, words);
    int at = at(placeless);
    ByteArrayOutputStream out = new ByteArrayOutputStream(placeless.length + mark.length);
    out.write(placeless, 0, at);
    out.writeBytes(mark);
    out.write(placeless, at, placeless.length - at);
    return out.toByteArray();
  }

  /** The sum that the logbook names; empty where no mark is, or the bytes changed since. */
  static Optional<String> find(byte[] picture) {
    if (PictureType.find(picture).isEmpty()) {
      return Optional.empty();
    }
    int at = at(picture);
    int from = at + (isJpeg(picture) ? JPEG_HEAD : PNG_HEAD);
    if (from + LENGTH > picture.length) {
      return Optional.empty();
    }
    String words = new String(picture, from, LENGTH, StandardCharsets.US_ASCII);
    Matcher told = READ.matcher(words);
    return told.matches() && isSound(picture, at, words, told.group(2))
        ? Optional.of(told.group(1))
        : Optional.empty();
  }

  /** Whether the mark is as it was put, and the rest has its sum. */
  private static boolean isSound(byte[] picture, int at, String words, String sum) {
    byte[] mark = mark(picture, words);
    int end = at + mark.length;
    return end <= picture.length
        && Arrays.equals(picture, at, end, mark, 0, mark.length)
        && sum.equals(Sums.digest(without(picture, at, end)));
  }

  private static byte[] mark(byte[] picture, String words) {
    byte[] told = words.getBytes(StandardCharsets.US_ASCII);
    return isJpeg(picture) ? comment(told) : chunk(told);
  }

  private static boolean isJpeg(byte[] picture) {
    return picture[0] == (byte) 0xFF;
  }

  private static byte[] without(byte[] picture, int from, int to) {
    byte[] left = Arrays.copyOf(picture, picture.length - (to - from));
    System.arraycopy(picture, to, left, from, picture.length - to);
    return left;
  }

  /** Where the mark stands. */
  private static int at(byte[] picture) {
    if (!isJpeg(picture)) {
      return PNG_FIRST;
    }
    int at = 2;
    while (isApplications(picture, at)) {
      at += 2 + (((picture[at + 2] & 0xFF) << 8) | (picture[at + 3] & 0xFF));
    }
    return Math.min(at, picture.length);
  }

  private static boolean isApplications(byte[] picture, int at) {
    return at + JPEG_HEAD <= picture.length
        && picture[at] == (byte) 0xFF
        && (picture[at + 1] & 0xFF) >= FIRST_APP
        && (picture[at + 1] & 0xFF) <= LAST_APP;
  }

  private static byte[] comment(byte[] told) {
    ByteBuffer segment = ByteBuffer.allocate(JPEG_HEAD + told.length);
    return segment
        .put((byte) 0xFF)
        .put((byte) COMMENT)
        .putShort((short) (2 + told.length))
        .put(told)
        .array();
  }

  private static byte[] chunk(byte[] told) {
    byte[] type = CHUNK.getBytes(StandardCharsets.US_ASCII);
    CRC32 sum = new CRC32();
    sum.update(type);
    sum.update(told);
    ByteBuffer chunk = ByteBuffer.allocate(PNG_HEAD + told.length + PNG_SUM);
    return chunk.putInt(told.length).put(type).put(told).putInt((int) sum.getValue()).array();
  }
}
