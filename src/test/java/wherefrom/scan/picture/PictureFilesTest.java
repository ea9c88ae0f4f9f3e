package wherefrom.scan.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.job.image.GreyImage;

class PictureFilesTest {
  private static final int BLOCK = 16;
  private static final int[][] SHADES = {{0, 40, 80}, {120, 160, 200}};
  private static final int WIDTH = 3 * BLOCK;
  private static final int HEIGHT = 2 * BLOCK;

  @TempDir Path folder;

  private final PictureFiles pictures = new PictureFiles();

  private static int shade(int x, int y) {
    return SHADES[y / BLOCK][x / BLOCK];
  }

  private static BufferedImage picture(int type) {
    BufferedImage picture = new BufferedImage(WIDTH, HEIGHT, type);
    Graphics2D graphics = picture.createGraphics();
    for (int y = 0; y < HEIGHT; y += BLOCK) {
      for (int x = 0; x < WIDTH; x += BLOCK) {
        graphics.setColor(new Color(shade(x, y), shade(x, y), shade(x, y)));
        graphics.fillRect(x, y, BLOCK, BLOCK);
      }
    }
    graphics.dispose();
    return picture;
  }

  private Path file(String name, byte[] bytes) throws IOException {
    return Files.write(folder.resolve(name), bytes);
  }

  private Path png(BufferedImage picture) throws IOException {
    Path file = folder.resolve("picture.png");
    ImageIO.write(picture, "png", file.toFile());
    return file;
  }

  private static void assertUpright(GreyImage image, int tolerance) {
    assertThat(image.width()).isEqualTo(WIDTH);
    assertThat(image.height()).isEqualTo(HEIGHT);
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        assertThat(image.at(x, y))
            .as(x + " across, " + y + " down")
            .isBetween(shade(x, y) - tolerance, shade(x, y) + tolerance);
      }
    }
  }

  /** CIPA DC-008 / JEITA CP-3451, tag 0x0112: where row 0 and column 0 are on the upright view. */
  @ParameterizedTest
  @CsvSource({
    "1, top, left",
    "2, top, right",
    "3, bottom, right",
    "4, bottom, left",
    "5, left, top",
    "6, right, top",
    "7, right, bottom",
    "8, left, bottom"
  })
  void aPictureIsTurnedUprightAsExifSays(int orientation, String rowZero, String columnZero)
      throws IOException {
    boolean turned = orientation >= 5;
    int storedWidth = turned ? HEIGHT : WIDTH;
    int storedHeight = turned ? WIDTH : HEIGHT;
    BufferedImage stored = new BufferedImage(storedWidth, storedHeight, BufferedImage.TYPE_INT_RGB);
    for (int row = 0; row < storedHeight; row++) {
      for (int column = 0; column < storedWidth; column++) {
        int x = turned ? along(rowZero, row, WIDTH) : along(columnZero, column, WIDTH);
        int y = turned ? along(columnZero, column, HEIGHT) : along(rowZero, row, HEIGHT);
        stored.setRGB(column, row, 0x010101 * shade(x, y));
      }
    }
    for (ByteOrder order : new ByteOrder[] {ByteOrder.LITTLE_ENDIAN, ByteOrder.BIG_ENDIAN}) {
      byte[] jpeg = JpegFiles.withOrientation(JpegFiles.of(stored), orientation, order);
      assertUpright(pictures.load(file("held.jpg", jpeg)), 3);
    }
  }

  private static int along(String side, int index, int length) {
    boolean fromStart = side.equals("top") || side.equals("left");
    return fromStart ? index : length - 1 - index;
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 9, 65535})
  void anOrientationThatExifDoesNotKnowIsLeftAlone(int orientation) throws IOException {
    byte[] plain = JpegFiles.of(picture(BufferedImage.TYPE_INT_RGB));
    byte[] jpeg = JpegFiles.withOrientation(plain, orientation, ByteOrder.BIG_ENDIAN);
    assertUpright(pictures.load(file("odd.jpg", jpeg)), 3);
  }

  @ParameterizedTest
  @ValueSource(
      ints = {
        BufferedImage.TYPE_INT_RGB,
        BufferedImage.TYPE_INT_ARGB,
        BufferedImage.TYPE_3BYTE_BGR,
        BufferedImage.TYPE_4BYTE_ABGR,
        BufferedImage.TYPE_BYTE_INDEXED
      })
  void everyKindOfPngHasItsShades(int type) throws IOException {
    // The palette of TYPE_BYTE_INDEXED has its greys in steps of up to 12.
    int tolerance = type == BufferedImage.TYPE_BYTE_INDEXED ? 12 : 0;
    assertUpright(pictures.load(png(picture(type))), tolerance);
  }

  @ParameterizedTest
  @ValueSource(ints = {BufferedImage.TYPE_BYTE_GRAY, BufferedImage.TYPE_USHORT_GRAY})
  void greyFilesKeepTheirSamples(int type) throws IOException {
    BufferedImage picture = new BufferedImage(WIDTH, HEIGHT, type);
    int scale = type == BufferedImage.TYPE_USHORT_GRAY ? 257 : 1;
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        picture.getRaster().setSample(x, y, 0, shade(x, y) * scale);
      }
    }
    assertUpright(pictures.load(png(picture)), 0);
    if (type == BufferedImage.TYPE_BYTE_GRAY) {
      assertUpright(pictures.load(file("gray.jpg", JpegFiles.of(picture))), 2);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"gif", "bmp", "tiff"})
  void otherFormatsAreRead(String format) throws IOException {
    Path file = folder.resolve("picture." + format);
    assertThat(ImageIO.write(picture(BufferedImage.TYPE_INT_RGB), format, file.toFile())).isTrue();
    assertUpright(pictures.load(file), 0);
  }

  @Test
  void blackAndWhiteFilesAreBlackAndWhite() throws IOException {
    byte[] whiteFirst = {(byte) 255, 0};
    IndexColorModel model = new IndexColorModel(1, 2, whiteFirst, whiteFirst, whiteFirst);
    BufferedImage picture = new BufferedImage(40, 20, BufferedImage.TYPE_BYTE_BINARY, model);
    picture.getRaster().setSample(7, 3, 0, 1);
    GreyImage image = pictures.load(png(picture));
    assertThat(image.at(7, 3)).isZero();
    assertThat(image.at(8, 3)).isEqualTo(255);
  }

  @Test
  void whatShinesThroughIsWhite() throws IOException {
    BufferedImage picture = new BufferedImage(3, 1, BufferedImage.TYPE_INT_ARGB);
    picture.setRGB(0, 0, 0x00000000);
    picture.setRGB(1, 0, 0xFF000000);
    picture.setRGB(2, 0, 0x80000000);
    GreyImage image = pictures.load(png(picture));
    assertThat(new int[] {image.at(0, 0), image.at(1, 0), image.at(2, 0)})
        .containsExactly(255, 0, 127);
  }

  @Test
  void coloursHaveTheirLuminance() throws IOException {
    int[] colours = {0xFF0000, 0x00FF00, 0x0000FF, 0xFFFF00};
    // ITU-R BT.601-7, 2.5.1: 0.299 R + 0.587 G + 0.114 B.
    int[] luminance = {76, 150, 29, 226};
    for (int index = 0; index < colours.length; index++) {
      BufferedImage picture = new BufferedImage(16, 16, BufferedImage.TYPE_INT_RGB);
      Graphics2D graphics = picture.createGraphics();
      graphics.setColor(new Color(colours[index]));
      graphics.fillRect(0, 0, 16, 16);
      graphics.dispose();
      assertThat(pictures.load(png(picture)).at(8, 8)).isEqualTo(luminance[index]);
      assertThat(pictures.load(file("c.jpg", JpegFiles.of(picture))).at(8, 8))
          .isBetween(luminance[index] - 2, luminance[index] + 2);
    }
  }

  /** Inks of cyan, magenta, yellow, black in 1/255 and the light they leave. */
  @ParameterizedTest
  @CsvSource({
    "0, 0, 0, 0, 255",
    "0, 0, 0, 255, 0",
    "255, 255, 255, 0, 0",
    "0, 0, 0, 127, 128",
    "0, 255, 255, 0, 76",
    "255, 0, 255, 0, 150",
    "51, 51, 51, 51, 163"
  })
  void filesForFourColourPrintAreRead(int cyan, int magenta, int yellow, int black, int grey)
      throws IOException {
    byte[] plain = JpegFiles.of(inks(cyan, magenta, yellow, black));
    assertThat(pictures.load(file("inks.jpg", plain)).at(8, 8)).isBetween(grey - 2, grey + 2);
    Raster inverse = inks(255 - cyan, 255 - magenta, 255 - yellow, 255 - black);
    byte[] inverted = JpegFiles.withColourTransform(JpegFiles.of(inverse), 0);
    assertThat(pictures.load(file("inks.jpg", inverted)).at(8, 8)).isBetween(grey - 2, grey + 2);
  }

  /** As ImageMagick 6.9.11 wrote the inks 10, 60, 110, 160 with the luminance transform. */
  @Test
  void inksStoredAsLuminanceAreRead() throws IOException {
    byte[] jpeg = JpegFiles.withColourTransform(JpegFiles.of(inks(51, 161, 99, 95)), 2);
    double light = 0.299 * 245 + 0.587 * 195 + 0.114 * 145;
    int grey = (int) Math.round(light * (255 - 160) / 255);
    assertThat(pictures.load(file("inks.jpg", jpeg)).at(8, 8)).isBetween(grey - 2, grey + 2);
  }

  private static Raster inks(int cyan, int magenta, int yellow, int black) {
    WritableRaster raster = Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, 16, 16, 4, null);
    for (int pixel = 0; pixel < 256; pixel++) {
      raster.setPixel(pixel % 16, pixel / 16, new int[] {cyan, magenta, yellow, black});
    }
    return raster;
  }

  @Test
  void aPictureThatWouldFillTheMemoryIsReadSmaller() throws IOException {
    BufferedImage picture = new BufferedImage(2000, 1000, BufferedImage.TYPE_3BYTE_BGR);
    Path file = png(picture);
    // Three bytes a pixel and one for the grey value: 8 MB whole, 0.9 MB at a third.
    GreyImage image = new PictureFiles(1_000_000).load(file);
    assertThat(image.width()).isEqualTo(667);
    assertThat(image.height()).isEqualTo(334);
    assertThat(new PictureFiles(8_000_000).load(file).width()).isEqualTo(2000);
  }

  @Test
  void fiftyMegapixelsAreReadInTwoBytesAPixel() throws IOException {
    int width = 8192;
    int height = 6144;
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    byte[] row = new byte[width];
    Arrays.fill(row, (byte) 90);
    for (int y = 6000; y < 6100; y++) {
      picture.getRaster().setDataElements(0, y, width, 1, row);
    }
    byte[] jpeg = JpegFiles.withOrientation(JpegFiles.of(picture), 6, ByteOrder.LITTLE_ENDIAN);
    GreyImage image = new PictureFiles(2L * width * height).load(file("large.jpg", jpeg));
    assertThat(image.width()).isEqualTo(height);
    assertThat(image.height()).isEqualTo(width);
    assertThat(image.at(height - 1 - 6050, 4000)).isBetween(88, 92);
    assertThat(image.at(height - 1 - 5000, 4000)).isBetween(0, 2);
  }

  @Test
  void aPictureThatBreaksOffIsReadOrRefusedWithASentence() throws IOException {
    SplittableRandom random = new SplittableRandom(3);
    BufferedImage noise = new BufferedImage(160, 160, BufferedImage.TYPE_BYTE_GRAY);
    for (int pixel = 0; pixel < 160 * 160; pixel++) {
      noise.getRaster().setSample(pixel % 160, pixel / 160, 0, random.nextInt(256));
    }
    byte[] jpeg = JpegFiles.of(noise);
    GreyImage whole = pictures.load(file("whole.jpg", jpeg));
    GreyImage half = pictures.load(file("half.jpg", Arrays.copyOf(jpeg, jpeg.length / 2)));
    assertThat(Arrays.copyOf(half.pixels(), 160 * 64))
        .isEqualTo(Arrays.copyOf(whole.pixels(), 160 * 64));
    assertThat(half.pixels()).isNotEqualTo(whole.pixels());
    byte[] png = Files.readAllBytes(png(picture(BufferedImage.TYPE_INT_RGB)));
    Path cut = file("short.png", Arrays.copyOf(png, png.length / 2));
    assertThatThrownBy(() -> pictures.load(cut))
        .isInstanceOf(IOException.class)
        .hasMessage(cut + " is damaged. Copy it again, take it again, or save it as PNG.");
  }

  @Test
  void whatIsNoPictureIsRefusedWithASentence() throws IOException {
    Path text = file("notes.jpg", "rod 4: pitted".getBytes(StandardCharsets.UTF_8));
    Path empty = file("empty.png", new byte[0]);
    Path none = folder.resolve("none.png");
    assertThatThrownBy(() -> pictures.load(text))
        .isInstanceOf(IOException.class)
        .hasMessage(text + " is not a picture that can be read. Save it as a PNG or JPEG file.");
    assertThatThrownBy(() -> pictures.load(empty))
        .isInstanceOf(IOException.class)
        .hasMessageContaining(empty + " is empty");
    assertThatThrownBy(() -> pictures.load(none))
        .isInstanceOf(IOException.class)
        .hasMessageContaining(none + " is not there");
    assertThatThrownBy(() -> pictures.load(folder))
        .isInstanceOf(IOException.class)
        .hasMessageContaining(folder + " is a folder");
  }

  @Test
  void aPictureOfGiganticSizeIsRefusedBeforeItIsRead() throws IOException {
    byte[] png = Files.readAllBytes(png(picture(BufferedImage.TYPE_INT_RGB)));
    // The header chunk's width and height, and its CRC-32 (ISO/IEC 15948, 5.3 and 11.2.2).
    ByteBuffer bytes = ByteBuffer.wrap(png);
    bytes.putInt(16, 40_000).putInt(20, 30_000);
    CRC32 crc = new CRC32();
    crc.update(png, 12, 17);
    bytes.putInt(29, (int) crc.getValue());
    Path huge = file("huge.png", png);
    assertThatThrownBy(() -> pictures.load(huge))
        .isInstanceOf(IOException.class)
        .hasMessage(
            huge + " is too large with 40000 x 30000 pixels: cut out the part that matters.");
  }

  /** Whatever bytes go wrong, the answer is a picture or a sentence that names the file. */
  @Test
  void damageAnywhereGivesAPictureOrASentence() throws IOException {
    SplittableRandom random = new SplittableRandom(11);
    BufferedImage picture = picture(BufferedImage.TYPE_INT_RGB);
    byte[] jpeg = JpegFiles.withOrientation(JpegFiles.of(picture), 6, ByteOrder.BIG_ENDIAN);
    byte[] png = Files.readAllBytes(png(picture));
    int refused = 0;
    for (int round = 0; round < 600; round++) {
      byte[] damaged = (round % 2 == 0 ? jpeg : png).clone();
      for (int hit = random.nextInt(1, 6); hit > 0; hit--) {
        damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
      }
      Path file = file("damaged.bin", damaged);
      try {
        GreyImage image = pictures.load(file);
        assertThat(image.pixels()).hasSize(image.width() * image.height());
      } catch (IOException sentence) {
        assertThat(sentence).hasMessageContaining(file.toString());
        refused++;
      }
    }
    assertThat(refused).isBetween(50, 599);
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "jpg", "gif", "bmp", "tiff"})
  void aFileCutAnywhereGivesAPictureOrASentence(String format) throws IOException {
    Path whole = folder.resolve("whole." + format);
    ImageIO.write(picture(BufferedImage.TYPE_INT_RGB), format, whole.toFile());
    byte[] bytes = Files.readAllBytes(whole);
    SplittableRandom random = new SplittableRandom(12);
    int refused = 0;
    for (int round = 0; round < 100; round++) {
      int length = round < 40 ? 1 + round : random.nextInt(1, bytes.length);
      Path file = file("cut.bin", Arrays.copyOf(bytes, length));
      try {
        pictures.load(file);
      } catch (IOException sentence) {
        assertThat(sentence).hasMessageStartingWith(file + " is ");
        refused++;
      }
    }
    assertThat(refused).isGreaterThan(10);
  }
}
