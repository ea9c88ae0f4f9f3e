package wherefrom.logbook;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.zip.CRC32;

/**
 * Takes out of a PNG where it was taken (PNG, third edition, W3C, 11.3): what the camera told, but
 * for which way up it is, and all words, as they may be packed; what stands behind the end, too.
 */
final class PlacelessPng {
  private static final int SIGNATURE = 8;
  private static final int FRAME = 12;
  private static final String EXIF = "eXIf";
  private static final String END = "IEND";
  private static final Set<String> WORDS = Set.of("iTXt", "tEXt", "zTXt");

  private final byte[] bytes;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  private PlacelessPng(byte[] bytes) {
    this.bytes = bytes;
  }

  /** The same picture; the very bytes where nothing is left out, or the file is odd. */
  static byte[] of(byte[] png) {
    PlacelessPng picture = new PlacelessPng(png);
    return picture.walk() ? picture.out.toByteArray() : png;
  }

  private boolean walk() {
    out.write(bytes, 0, SIGNATURE);
    int at = SIGNATURE;
    String type = "";
    while (!type.equals(END)) {
      int length = at + FRAME <= bytes.length ? ByteBuffer.wrap(bytes, at, 4).getInt() : -1;
      if (length < 0 || length > bytes.length - at - FRAME) {
        return false;
      }
      type = new String(bytes, at + 4, 4, StandardCharsets.US_ASCII);
      chunk(type, at, length);
      at += FRAME + length;
    }
    return out.size() < bytes.length;
  }

  private void chunk(String type, int at, int length) {
    Tiff told = new Tiff(bytes, at + 8, at + 8 + length);
    if (type.equals(EXIF) && told.tellsPlace()) {
      told.orientation().ifPresent(this::upright);
    } else if (!WORDS.contains(type)) {
      out.write(bytes, at, FRAME + length);
    }
  }

  private void upright(int orientation) {
    byte[] tiff = Tiff.upright(orientation);
    byte[] type = EXIF.getBytes(StandardCharsets.US_ASCII);
    CRC32 sum = new CRC32();
    sum.update(type);
    sum.update(tiff);
    ByteBuffer chunk = ByteBuffer.allocate(FRAME + tiff.length);
    chunk.putInt(tiff.length).put(type).put(tiff).putInt((int) sum.getValue());
    out.writeBytes(chunk.array());
  }
}
