package wherefrom.logbook;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Locale;
import java.util.zip.CRC32C;

/** The sums that guard the logbook. */
final class Sums {
  /** Half of SHA-256: 128 bits are plenty to chain lines. */
  private static final int CHAIN_BYTES = 16;

  private Sums() {}

  /** CRC-32C (Castagnoli) as eight hexadecimal digits. */
  static String crc(byte[] bytes, int length) {
    CRC32C crc = new CRC32C();
    crc.update(bytes, 0, length);
    return String.format(Locale.ROOT, "%08x", crc.getValue());
  }

  /** What the next line says of a line: the first 128 bits of its SHA-256, in hexadecimal. */
  static String chain(byte[] line) {
    return HexFormat.of().formatHex(sha256().digest(line), 0, CHAIN_BYTES);
  }

  /** SHA-256 in hexadecimal. */
  static String digest(byte[] bytes) {
    return HexFormat.of().formatHex(sha256().digest(bytes));
  }

  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
