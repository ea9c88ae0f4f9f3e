package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wherefrom.parts.LabelFrame;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagSymbol;
import wherefrom.parts.TagType;

/** What is no picture gets its sentence and status 2; pictures beside it are read all the same. */
class ReadBadPicturesTest {
  private static final String DIGITS = new TagCode(TagType.PART, 4_217_093, 12, 1).digits();

  @TempDir Path folder;
  private Shop shop;
  private Path good;

  @BeforeEach
  void drawATag() throws IOException {
    shop = new Shop(folder);
    good = folder.resolve("good.png");
    int dots = 10;
    int side = (LabelFrame.WIDTH + 20) * dots;
    BufferedImage image = new BufferedImage(side, side, BufferedImage.TYPE_BYTE_GRAY);
    TagSymbol symbol = TagSymbol.ofDigits(DIGITS);
    for (int y = 0; y < side; y++) {
      for (int x = 0; x < side; x++) {
        image.setRGB(x, y, isDark(symbol, y / dots - 10, x / dots - 10) ? 0x101010 : 0xF0F0F0);
      }
    }
    ImageIO.write(image, "png", good.toFile());
  }

  private static boolean isDark(TagSymbol symbol, int row, int column) {
    int most = LabelFrame.WIDTH - 1;
    if (row < 0 || column < 0 || row > most || column > most) {
      return false;
    }
    int inner = row - LabelFrame.INSET;
    int across = column - LabelFrame.INSET;
    boolean inside = Math.min(inner, across) >= 0 && Math.max(inner, across) < TagSymbol.SIZE;
    return inside ? symbol.dark(inner, across) : LabelFrame.isFrame(row, column);
  }

  /** Kinds of bad input. */
  enum Bad {
    EMPTY,
    TEXT_NAMED_PNG,
    PDF_NAMED_JPG,
    HEAD_OF_A_JPEG_ALONE,
    PNG_CUT_IN_ITS_HEAD,
    HUGE_PICTURE,
    NO_SUCH_FILE,
    NO_SUCH_FOLDER,
    FILE_AS_FOLDER,
    NUL_IN_THE_NAME;

    String make(Path folder) throws IOException {
      Path file = folder.resolve(name().toLowerCase(Locale.ROOT) + ".png");
      switch (this) {
        case EMPTY -> Files.createFile(file);
        case TEXT_NAMED_PNG -> Files.writeString(file, "dear diary, today I took the heads off\n");
        case PDF_NAMED_JPG -> Files.writeString(file, "%PDF-1.7\n1 0 obj\n<<>>\nendobj\n");
        case HEAD_OF_A_JPEG_ALONE ->
            Files.write(file, new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE0, 0});
        case PNG_CUT_IN_ITS_HEAD -> Files.write(file, Arrays.copyOf(png(90, 90), 20));
        case HUGE_PICTURE -> Files.write(file, png(60_000, 60_000));
        case NO_SUCH_FILE -> {}
        case NO_SUCH_FOLDER -> {
          return folder.resolve("nowhere").resolve("at-all.png").toString();
        }
        case FILE_AS_FOLDER -> {
          return Files.createFile(file).resolve("inside.png").toString();
        }
        default -> {
          return "a\0b.png";
        }
      }
      return file.toString();
    }

    /** A PNG that has a head and no body. */
    private static byte[] png(int width, int height) {
      ByteBuffer bytes = ByteBuffer.allocate(33);
      bytes.put(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10}).putInt(13);
      bytes.put(new byte[] {'I', 'H', 'D', 'R'}).putInt(width).putInt(height);
      bytes.put(new byte[] {8, 0, 0, 0, 0});
      CRC32 crc = new CRC32();
      crc.update(bytes.array(), 12, 17);
      return bytes.putInt((int) crc.getValue()).array();
    }
  }

  private static void isASentence(Shop.Outcome outcome) {
    assertThat(outcome.status()).as(outcome.toString()).isEqualTo(2);
    assertThat(outcome.err().lines().findFirst().orElse("")).matches(".{10,}[.]");
    assertThat(outcome.err()).doesNotContain("Exception", "\tat ", "fault in Wherefrom", "null");
  }

  @ParameterizedTest
  @EnumSource
  void aloneItHasItsSentenceAndStatusTwo(Bad bad) throws IOException {
    Shop.Outcome outcome = shop.run("read", bad.make(folder));
    isASentence(outcome);
    assertThat(outcome.out()).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(names = "NUL_IN_THE_NAME", mode = EnumSource.Mode.EXCLUDE)
  void besideItTheOthersAreRead(Bad bad) throws IOException {
    Shop.Outcome outcome = shop.run("read", bad.make(folder), good.toString());
    isASentence(outcome);
    assertThat(outcome.lines()).hasSize(1).allMatch(line -> line.contains(DIGITS));
  }

  @Test
  void whatLiesInAFolderBesidePicturesIsNoReproach() throws IOException {
    Files.writeString(folder.resolve("notes.txt"), "not a picture");
    Shop.Outcome outcome = shop.run("read", folder.toString());
    assertThat(outcome.status()).as(outcome.toString()).isZero();
    assertThat(outcome.out()).contains(DIGITS);
    assertThat(outcome.err()).contains("notes.txt");
  }

  @Test
  void aFolderWithoutFilesIsSaid() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    isASentence(shop.run("read", empty.toString()));
  }

  @Test
  void aTagThatWasFoundAndNotReadIsAnElementOfItsOwn() throws IOException {
    BufferedImage image = ImageIO.read(good.toFile());
    Graphics2D pen = image.createGraphics();
    pen.setColor(Color.GRAY);
    int third = image.getWidth() / 3;
    pen.fillRect(third, third, third, third);
    pen.dispose();
    ImageIO.write(image, "png", good.toFile());

    Shop.Outcome outcome = shop.run("read", "--json", good.toString());

    assertThat(outcome.status()).isEqualTo(1);
    JsonNode read = new ObjectMapper().readTree(outcome.out());
    assertThat(read).hasSize(1);
    assertThat(read.get(0).has("code")).isFalse();
    assertThat(read.get(0).path("unread").asText()).isEqualTo("dirty");
    assertThat(read.get(0).path("outline")).hasSize(4);
    double side = image.getWidth();
    for (JsonNode corner : read.get(0).path("outline")) {
      assertThat(corner.path("x").asDouble()).isBetween(0.0, side);
      assertThat(corner.path("y").asDouble()).isBetween(0.0, side);
    }
  }

  @Test
  void aPictureThatMayNotBeReadIsSaid() throws IOException {
    Path closed = Files.copy(good, folder.resolve("closed.png"));
    assertThat(closed.toFile().setReadable(false, false)).isTrue();
    assumeFalse(Files.isReadable(closed), "this user may read everything");
    isASentence(shop.run("read", closed.toString()));
  }
}
