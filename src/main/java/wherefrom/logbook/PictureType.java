package wherefrom.logbook;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;

/** Pictures that can be kept, known by how their bytes begin and end. */
enum PictureType {
  /** PNG, third edition (W3C): signature, then an IHDR chunk; an IEND chunk last. */
  PNG("png"),
  /** JPEG, ITU-T T.81: a start-of-image marker, another marker; an end-of-image marker. */
  JPEG("jpg");

  private static final byte[] PNG_START =
      HexFormat.of().parseHex("89504e470d0a1a0a0000000d49484452");
  private static final byte[] PNG_END = "IEND".getBytes(StandardCharsets.US_ASCII);
  private static final byte[] JPEG_START = HexFormat.of().parseHex("ffd8ff");
  private static final byte[] JPEG_END = HexFormat.of().parseHex("ffd9");

  private final String extension;

  PictureType(String extension) {
    this.extension = extension;
  }

  String extension() {
    return extension;
  }

  static Optional<PictureType> find(byte[] bytes) {
    if (startsWith(bytes, PNG_START) && holds(bytes, PNG_END)) {
      return Optional.of(PNG);
    }
    return startsWith(bytes, JPEG_START) && holds(bytes, JPEG_END)
        ? Optional.of(JPEG)
        : Optional.empty();
  }

  private static boolean startsWith(byte[] bytes, byte[] start) {
    return bytes.length >= start.length
        && Arrays.equals(bytes, 0, start.length, start, 0, start.length);
  }

  /** Looked for from the end: cameras add bytes of their own behind it. */
  private static boolean holds(byte[] bytes, byte[] end) {
    for (int at = bytes.length - end.length; at >= 0; at--) {
      if (Arrays.equals(bytes, at, at + end.length, end, 0, end.length)) {
        return true;
      }
    }
    return false;
  }
}
