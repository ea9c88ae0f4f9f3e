package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.parts.LabelFrame;
import wherefrom.parts.TagSymbol;

/** Sheets as PDF, and pictures of them read back. */
class SheetCommandsTest {
  private static final String STOCK = "a4-3x8-63.5x33.9";

  @TempDir Path folder;
  private Shop shop;
  private String job;
  private String pdf;

  @BeforeEach
  void begin() {
    shop = new Shop(folder);
    job = shop.begin("engine");
    pdf = shop.path("sheet.pdf");
  }

  private Shop.Outcome tags(String... more) {
    List<String> words = new java.util.ArrayList<>(List.of("tags", "--job", job));
    words.addAll(List.of("--stock", STOCK, "--out", pdf, "--replace"));
    words.addAll(Arrays.asList(more));
    return shop.run(words.toArray(String[]::new));
  }

  private Path picture(int page, int dpi) throws IOException {
    Files.createDirectories(folder.resolve("pictures"));
    Path png = folder.resolve("pictures").resolve("page" + page + ".png");
    try (PDDocument document = Loader.loadPDF(Path.of(pdf).toFile())) {
      BufferedImage image = new PDFRenderer(document).renderImageWithDPI(page, dpi, ImageType.GRAY);
      ImageIO.write(image, "png", png.toFile());
    }
    return png;
  }

  /** A label with these digits, ten dots to a module. */
  private Path symbol(String digits) throws IOException {
    TagSymbol symbol = TagSymbol.ofDigits(digits);
    int dots = 10;
    int side = LabelFrame.WIDTH * dots;
    BufferedImage image = new BufferedImage(2 * side, 2 * side, BufferedImage.TYPE_BYTE_GRAY);
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        boolean dark = isDark(symbol, y / dots - 10, x / dots - 10);
        image.setRGB(x, y, dark ? 0x101010 : 0xf0f0f0);
      }
    }
    Path png = folder.resolve("symbol.png");
    ImageIO.write(image, "png", png.toFile());
    return png;
  }

  private static boolean isDark(TagSymbol symbol, int row, int column) {
    int most = LabelFrame.WIDTH - 1;
    if (row < 0 || column < 0 || row > most || column > most) {
      return false;
    }
    int symbolRow = row - LabelFrame.INSET;
    int symbolColumn = column - LabelFrame.INSET;
    boolean inside =
        Math.min(symbolRow, symbolColumn) >= 0
            && Math.max(symbolRow, symbolColumn) < TagSymbol.SIZE;
    return inside ? symbol.dark(symbolRow, symbolColumn) : LabelFrame.isFrame(row, column);
  }

  @Test
  void stocksAreListedWithTheirLabels() {
    assertThat(shop.right("stocks").rows())
        .anySatisfy(row -> assertThat(row).containsExactly(row[0], row[1], "24", "300"));
  }

  @Test
  void seventyFourTagsFillFourSheets() {
    assertThat(tags().out()).contains("labels 74, pages 4.");
    assertThat(tags("--start", "24").out()).contains("labels 74, pages 5.");
  }

  @Test
  void aSheetOfTagsIsReadWholeAndSaidInWords() throws IOException {
    tags("--only", "pushrod");
    Path png = picture(0, 203);
    Shop.Outcome read = shop.right("read", png.toString(), "--job", job);
    List<String> pushrods =
        shop.right("places", "--job", job).rows().stream()
            .filter(row -> row[2].endsWith("pushrod"))
            .map(row -> row[1] + "\t" + row[2])
            .toList();
    assertThat(pushrods).hasSize(16);
    assertThat(read.rows())
        .allSatisfy(row -> assertThat(row[0]).isEqualTo(png.toString()))
        .extracting(row -> row[1] + "\t" + row[2])
        .containsExactlyInAnyOrderElementsOf(pushrods);
  }

  @Test
  void withoutAJobTheNumbersAreSaid() throws IOException {
    tags("--only", "17");
    String read = shop.right("read", picture(0, 203).toString()).out();
    assertThat(read).contains("\tpart 0017 of engine ");
  }

  @Test
  void everyCardHasItsMeaning() throws IOException {
    assertThat(tags("--cards", "places").out()).contains("labels 42,");
    tags("--cards", "actions");
    assertThat(shop.right("read", picture(0, 203).toString(), "--job", job).rows())
        .extracting(row -> row[2])
        .hasSize(6)
        .contains("action card: UNDO, one step back");
    tags("--cards", "baskets", "--count", "2");
    assertThat(shop.right("read", picture(0, 203).toString(), "--job", job).rows())
        .extracting(row -> row[2])
        .containsExactlyInAnyOrder("basket 1", "basket 2");
  }

  /** A bench picture with two codes of another make and a tag of the job. */
  private Path mixed(String digits) throws IOException {
    BufferedImage image = new BufferedImage(1200, 500, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, 1200, 500);
    graphics.drawImage(ImageIO.read(symbol(digits).toFile()), 0, 0, 500, 500, null);
    graphics.drawImage(foreign("https://example.org/box 7"), 520, 60, null);
    graphics.drawImage(foreign("shelf B\ttray 3"), 860, 60, null);
    graphics.dispose();
    Path png = folder.resolve("mixed.png");
    ImageIO.write(image, "png", png.toFile());
    return png;
  }

  private static BufferedImage foreign(String text) throws IOException {
    try {
      return MatrixToImage.of(new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 320, 320));
    } catch (WriterException impossible) {
      throw new IOException(impossible);
    }
  }

  /** Black where a bit is set. */
  private static final class MatrixToImage {
    static BufferedImage of(BitMatrix matrix) {
      BufferedImage image =
          new BufferedImage(matrix.getWidth(), matrix.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
      for (int y = 0; y < matrix.getHeight(); y++) {
        for (int x = 0; x < matrix.getWidth(); x++) {
          image.setRGB(x, y, matrix.get(x, y) ? 0 : 0xffffff);
        }
      }
      return image;
    }
  }

  @Test
  void codesOfOtherMakeArePrintedAndMarkedWhenAskedFor() throws IOException {
    String tag = shop.codes(job, "cylinder 3, exhaust, pushrod").tag();
    String png = mixed(tag).toString();
    assertThat(shop.right("read", png, "--job", job).rows())
        .extracting(row -> row[1])
        .containsExactly(tag);
    Shop.Outcome any = shop.right("read", "--any", png, "--job", job);
    assertThat(any.rows())
        .extracting(row -> row[1] + "|" + row[2])
        .containsExactlyInAnyOrder(
            tag + "|cylinder 3, exhaust, pushrod",
            "https://example.org/box 7|foreign: not one of ours",
            "shelf B tray 3|foreign: not one of ours");
    assertThat(shop.right("read", "--any", "--json", png).out())
        .contains("\"shelf B\\ttray 3\"")
        .contains("\"foreign\":true")
        .contains("\"foreign\":false");
  }

  @Test
  void digitsThatAreNoTagAreLeftOutUnlessAskedFor() throws IOException {
    String png = symbol("1234567890123456").toString();
    assertThat(shop.run("read", png).status()).isEqualTo(1);
    assertThat(shop.right("read", "--any", png).out())
        .contains("\t1234567890123456\tforeign: not one of ours");
  }

  @Test
  void theScannerCardIsAPageOfItsOwn() {
    assertThat(tags("--cards", "scanner").out()).contains("labels 1, pages 1.");
  }

  @Test
  void onlyWhatNoSheetHoldsYetIsNew() {
    tags("--only", "1", "2", "3");
    assertThat(tags("--new").out()).contains("labels 71,");
    Shop.Outcome none = tags("--new");
    assertThat(none.status()).isEqualTo(2);
    assertThat(none.err()).startsWith("There is nothing of the kind to print.");
    String tag = shop.codes(job, "cylinder 1, intake, rocker").tag();
    shop.right("reprint", "--job", job, "--reason", "tag lost", tag);
    assertThat(tags("--new").out()).contains("labels 1,");
  }

  @Test
  void aFolderWithFilesThatAreNoPicturesSaysSoAndGoesOn() throws IOException {
    tags("--only", "17");
    Path png = picture(0, 203);
    Path pictures = png.getParent();
    Files.writeString(pictures.resolve("a-note.txt"), "not a picture");
    Files.write(pictures.resolve("cut.png"), Arrays.copyOf(Files.readAllBytes(png), 60));
    Shop.Outcome read = shop.run("read", pictures.toString());
    assertThat(read.status()).isZero();
    assertThat(read.rows()).hasSize(1);
    assertThat(read.err()).contains("a-note.txt is not a picture", "cut.png is damaged");
  }

  @Test
  void whereNothingIsAPictureTheCallIsBad() throws IOException {
    Files.createDirectories(folder.resolve("texts"));
    Files.writeString(folder.resolve("texts/a.txt"), "not a picture");
    assertThat(shop.run("read", shop.path("texts")).status()).isEqualTo(2);
    assertThat(shop.run("read", shop.path("nowhere.png")).status()).isEqualTo(2);
  }

  @Test
  void aPictureWithoutATagStops() throws IOException {
    Path white = folder.resolve("white.png");
    BufferedImage image = new BufferedImage(200, 200, BufferedImage.TYPE_BYTE_GRAY);
    ImageIO.write(image, "png", white.toFile());
    Shop.Outcome read = shop.run("read", white.toString());
    assertThat(read.status()).isEqualTo(1);
    assertThat(read.err()).contains("no tag was found");
  }
}
