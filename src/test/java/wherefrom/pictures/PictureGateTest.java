package wherefrom.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.ByteBuffer;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What would fill the memory is refused before it is decoded; what cameras take is let through. */
class PictureGateTest {
  private static final BufferedImage SMALL = new BufferedImage(64, 48, BufferedImage.TYPE_INT_RGB);

  private static byte[] jpeg(boolean progressive) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(out);
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setProgressiveMode(
          progressive ? ImageWriteParam.MODE_DEFAULT : ImageWriteParam.MODE_DISABLED);
      writer.write(null, new IIOImage(SMALL, null, null), param);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  /** The same file, whose frame header (ITU-T T.81, B.2.2) says another size. */
  private static byte[] sized(byte[] jpeg, int width, int height) {
    ByteBuffer bytes = ByteBuffer.wrap(jpeg.clone());
    for (int at = 0; at < jpeg.length - 9; at++) {
      int marker = jpeg[at + 1] & 0xFF;
      if (jpeg[at] == (byte) 0xFF && (marker == 0xC0 || marker == 0xC2)) {
        bytes.putShort(at + 5, (short) height).putShort(at + 7, (short) width);
        return bytes.array();
      }
    }
    throw new AssertionError("no frame header");
  }

  private static void pass(byte[] bytes) throws IOException {
    PictureGate.pass(() -> new ByteArrayInputStream(bytes));
  }

  @Test
  void ordinaryPicturesAreLetThrough() throws IOException {
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    ImageIO.write(SMALL, "png", png);
    pass(png.toByteArray());
    pass(jpeg(false));
    pass(jpeg(true));
    pass(new byte[0]);
    pass("not a picture".getBytes());
    pass(sized(jpeg(true), 6000, 4000));
  }

  @ParameterizedTest
  @CsvSource({
    "false, 20000, 15000, is too large with 20000 x 15000 pixels",
    "false, 12000, 9000, is cut off: nearly all of its picture is missing",
    "true, 65500, 65500, is too large with 65500 x 65500 pixels",
    "true, 12000, 9000, is stored in many passes over 108 million pixels"
  })
  void aSmallFileOfAVeryLargePictureIsRefused(
      boolean progressive, int width, int height, String said) throws IOException {
    byte[] huge = sized(jpeg(progressive), width, height);
    assertThatThrownBy(() -> pass(huge))
        .isInstanceOf(PictureGate.TooMuch.class)
        .hasMessageStartingWith(said)
        .hasMessageEndingWith(".");
    assertThatThrownBy(() -> ColourFile.read(() -> new ByteArrayInputStream(huge), 100))
        .isInstanceOf(PictureGate.TooMuch.class);
  }

  /** Scan upon scan over one picture of a camera's size. */
  @Test
  void manyPassesAreRefused() throws IOException {
    byte[] one = sized(jpeg(true), 4000, 3000);
    int scan = 0;
    while (!(one[scan] == (byte) 0xFF && one[scan + 1] == (byte) 0xDA)) {
      scan++;
    }
    ByteArrayOutputStream many = new ByteArrayOutputStream();
    many.write(one, 0, scan);
    for (int round = 0; round < 40; round++) {
      many.write(one, scan, one.length - scan - 2);
    }
    assertThatThrownBy(() -> pass(many.toByteArray()))
        .hasMessageStartingWith("is stored in many passes over 12 million pixels");
  }

  private static byte[] chunk(String type, byte[] body) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    CRC32 crc = new CRC32();
    crc.update(type.getBytes());
    crc.update(body);
    out.writeInt(body.length);
    out.write(type.getBytes());
    out.write(body);
    out.writeInt((int) crc.getValue());
    return bytes.toByteArray();
  }

  private static byte[] withChunk(byte[] png, byte[] chunk) {
    ByteBuffer with = ByteBuffer.allocate(png.length + chunk.length);
    return with.put(png, 0, 33).put(chunk).put(png, 33, png.length - 33).array();
  }

  private static byte[] png(int type) throws IOException {
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(64, 48, type), "png", png);
    return png.toByteArray();
  }

  /** Three hundred megabytes of text, which are never in the memory, not even of this test. */
  @Test
  void aPngThatCarriesMoreTextThanPictureIsRefused() throws IOException {
    byte[] png = png(BufferedImage.TYPE_INT_RGB);
    byte[] head =
        ByteBuffer.allocate(33 + 8)
            .put(png, 0, 33)
            .putInt(300_000_000)
            .put("tEXt".getBytes())
            .array();
    assertThatThrownBy(
            () ->
                PictureGate.pass(
                    () ->
                        new SequenceInputStream(
                            new ByteArrayInputStream(head), new Zeros(300_000_100))))
        .isInstanceOf(PictureGate.TooMuch.class)
        .hasMessage(
            "carries 300 MB besides the picture: save it again as a plain PNG or JPEG file.");
  }

  /** Text that is small in the file and grows a thousandfold is not unpacked to find the Exif. */
  @Test
  void textThatGrowsWhenItIsUnpackedDoesNotFillTheMemory() throws IOException {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    body.write("Comment\0\0".getBytes());
    try (DeflaterOutputStream deflated = new DeflaterOutputStream(body)) {
      for (int at = 0; at < 700; at++) {
        deflated.write(new byte[1_000_000]);
      }
    }
    byte[] grown = withChunk(png(BufferedImage.TYPE_INT_RGB), chunk("zTXt", body.toByteArray()));
    assertThat(ColourFile.read(() -> new ByteArrayInputStream(grown), 100).getWidth())
        .isEqualTo(64);
  }

  /** A stream of zeros. */
  private static final class Zeros extends InputStream {
    private long left;

    Zeros(long left) {
      this.left = left;
    }

    @Override
    public int read() {
      return left-- > 0 ? 0 : -1;
    }

    @Override
    public long skip(long bytes) {
      long skipped = Math.min(bytes, Math.max(0, left));
      left -= skipped;
      return skipped;
    }
  }
}
