package wherefrom.scan.picture;

import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** JPEG files for tests, with segments written byte by byte. */
public final class JpegFiles {
  private static final int APP1 = 0xE1;
  private static final int APP14 = 0xEE;
  private static final float FINE = 0.98f;

  private JpegFiles() {}

  public static byte[] of(BufferedImage picture) throws IOException {
    return of(picture, FINE);
  }

  /**
   * A file of another quality.
   *
   * @param quality 0 to 1
   */
  public static byte[] of(BufferedImage picture, float quality) throws IOException {
    return write(new IIOImage(picture, null, null), quality);
  }

  /** The samples as they are, whatever they mean. */
  static byte[] of(Raster samples) throws IOException {
    return write(new IIOImage(samples, null, null), FINE);
  }

  private static byte[] write(IIOImage image, float quality) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(out);
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(quality);
      writer.write(null, image, param);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  /** With an Exif segment that holds one tag, Orientation, in one of TIFF's byte orders. */
  public static byte[] withOrientation(byte[] jpeg, int orientation, ByteOrder order) {
    ByteBuffer tiff = ByteBuffer.allocate(6 + 8 + 2 + 12 + 4).order(order);
    tiff.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
    tiff.put((order == ByteOrder.LITTLE_ENDIAN ? "II" : "MM").getBytes(StandardCharsets.US_ASCII));
    tiff.putShort((short) 42).putInt(8);
    tiff.putShort((short) 1);
    tiff.putShort((short) 0x0112).putShort((short) 3).putInt(1);
    tiff.putShort((short) orientation).putShort((short) 0);
    tiff.putInt(0);
    return withSegment(jpeg, APP1, tiff.array());
  }

  /** With the APP14 marker of ITU-T T.872, 6.5.3. */
  static byte[] withColourTransform(byte[] jpeg, int transform) {
    ByteBuffer marker = ByteBuffer.allocate(12);
    marker.put("Adobe".getBytes(StandardCharsets.US_ASCII));
    marker.putShort((short) 100).putShort((short) 0).putShort((short) 0).put((byte) transform);
    return withSegment(jpeg, APP14, marker.array());
  }

  /** With a segment right behind the file's first marker. */
  public static byte[] withSegment(byte[] jpeg, int marker, byte[] body) {
    ByteBuffer with = ByteBuffer.allocate(jpeg.length + 4 + body.length);
    with.put(jpeg, 0, 2);
    with.put((byte) 0xFF).put((byte) marker).putShort((short) (body.length + 2)).put(body);
    with.put(jpeg, 2, jpeg.length - 2);
    return with.array();
  }
}
