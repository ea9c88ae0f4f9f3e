package wherefrom.ui.photos;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import wherefrom.job.image.CameraFrame;

/** A camera's frame as a PNG file: eight bits a colour, no filter (ISO/IEC 15948). */
final class PngFile {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
  private static final int TRUE_COLOUR = 2;

  private PngFile() {}

  static void write(CameraFrame frame, Path file) throws IOException {
    int width = frame.grey().width();
    int height = frame.grey().height();
    try (DataOutputStream out = new DataOutputStream(Files.newOutputStream(file))) {
      out.write(SIGNATURE);
      chunk(out, "IHDR", header(width, height));
      chunk(out, "IDAT", pixels(frame.bgra(), width, height));
      chunk(out, "IEND", new byte[0]);
    }
  }

  private static byte[] header(int width, int height) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    out.writeInt(width);
    out.writeInt(height);
    out.write(new byte[] {8, TRUE_COLOUR, 0, 0, 0});
    return bytes.toByteArray();
  }

  private static byte[] pixels(byte[] bgra, int width, int height) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (OutputStream out = new DeflaterOutputStream(bytes)) {
      byte[] row = new byte[1 + 3 * width];
      for (int y = 0; y < height; y++) {
        for (int x = 0; x < width; x++) {
          int at = 4 * (y * width + x);
          row[1 + 3 * x] = bgra[at + 2];
          row[2 + 3 * x] = bgra[at + 1];
          row[3 + 3 * x] = bgra[at];
        }
        out.write(row);
      }
    }
    return bytes.toByteArray();
  }

  private static void chunk(DataOutputStream out, String type, byte[] data) throws IOException {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 sum = new CRC32();
    sum.update(name);
    sum.update(data);
    out.writeInt(data.length);
    out.write(name);
    out.write(data);
    out.writeInt((int) sum.getValue());
  }
}
