package wherefrom.logbook;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.zip.CRC32C;

/** The sums that guard the logbook. */
final class Sums {
  /** Half of SHA-256: 128 bits are plenty to chain lines. */
  private static final int CHAIN_BYTES = 16;

  private Sums() {}

  /** CRC-32C (Castagnoli) of a stretch of bytes. */
  static int crc(byte[] bytes, int from, int length) {
    CRC32C crc = new CRC32C();
    crc.update(bytes, from, length);
    return (int) crc.getValue();
  }

  /** What the next line says of a line: the first 128 bits of its SHA-256, in hexadecimal. */
  static String chain(byte[] line) {
    return chain(line, 0, line.length);
  }

  static String chain(byte[] bytes, int from, int length) {
    MessageDigest sum = sha256();
    sum.update(bytes, from, length);
    return chain(sum);
  }

  /** The chain sum of what was put in, which is then empty again. */
  static String chain(MessageDigest sum) {
    return HexFormat.of().formatHex(sum.digest(), 0, CHAIN_BYTES);
  }

  /** SHA-256 in hexadecimal. */
  static String digest(byte[] bytes) {
    return HexFormat.of().formatHex(sha256().digest(bytes));
  }

  /** A line with its end. */
  static byte[] ended(byte[] line) {
    byte[] ended = Arrays.copyOf(line, line.length + 1);
    ended[line.length] = '\n';
    return ended;
  }

  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
