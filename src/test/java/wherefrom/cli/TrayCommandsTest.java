package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A whole sheet of pushrod tags stands for a tray. */
class TrayCommandsTest {
  @TempDir Path folder;
  private Shop shop;
  private String job;
  private String photograph;

  @BeforeEach
  void begin() throws IOException {
    shop = new Shop(folder);
    job = shop.begin("engine");
    String pdf = shop.path("sheet.pdf");
    shop.right(
        "tags", "--job", job, "--stock", "a4-3x8-63.5x33.9", "--out", pdf, "--only", "pushrod");
    Path png = folder.resolve("tray.png");
    try (PDDocument document = Loader.loadPDF(Path.of(pdf).toFile())) {
      BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, 203, ImageType.GRAY);
      ImageIO.write(image, "png", png.toFile());
    }
    photograph = png.toString();
  }

  private List<String> pushrods(String state) {
    return shop.right("places", "--job", job).rows().stream()
        .filter(row -> row[2].endsWith("pushrod") && row[3].equals(state))
        .map(row -> row[1])
        .toList();
  }

  @Test
  void wholeTraysAreLoggedOutAfterTheyWereShown() {
    Shop.Outcome shown = shop.right("tray", "out", "--job", job, photograph, "--preview");
    assertThat(shown.rows()).hasSize(16).allSatisfy(row -> assertThat(row[1]).isEqualTo("to log"));
    assertThat(pushrods("in")).hasSize(16);
    Shop.Outcome logged = shop.right("tray", "out", "--job", job, photograph);
    assertThat(logged.rows()).hasSize(16).allSatisfy(row -> assertThat(row[1]).isEqualTo("out"));
    assertThat(pushrods("out")).hasSize(16);
    shop.right("undo", "--job", job);
    assertThat(pushrods("out")).hasSize(15);
    assertThat(shop.right("tray", "out", "--job", job, photograph).rows())
        .extracting(row -> row[1])
        .containsOnlyOnce("out")
        .contains("left");
  }

  @Test
  void aCheckTellsWhatLiesHereWrongAndWhatIsAbsent() {
    Shop.Outcome early = shop.run("tray", "check", "--job", job, photograph);
    assertThat(early.status()).isEqualTo(1);
    assertThat(early.rows())
        .hasSize(16)
        .allSatisfy(row -> assertThat(row[1]).isEqualTo("elsewhere"));
    shop.right("tray", "out", "--job", job, photograph);
    assertThat(shop.right("tray", "check", "--job", job, photograph).rows())
        .hasSize(16)
        .allSatisfy(row -> assertThat(row[1]).isEqualTo("here"));
    shop.right("out", "--job", job, shop.codes(job, "cylinder 3, exhaust, lifter").tag());
    Shop.Outcome others = shop.right("tray", "check", "--job", job, photograph);
    assertThat(others.err()).contains("Also out, none of them on this photograph: 1 lifter.");
    assertThat(others.out()).doesNotContain("absent");
  }

  @Test
  void partsOfTheTraysKindThatAreNotOnItAreListedOneByOne() throws IOException {
    shop.right("tray", "out", "--job", job, photograph);
    BufferedImage whole = ImageIO.read(Path.of(photograph).toFile());
    Path half = folder.resolve("half.png");
    ImageIO.write(
        whole.getSubimage(0, 0, whole.getWidth(), whole.getHeight() / 2), "png", half.toFile());
    Shop.Outcome check = shop.run("tray", "check", "--job", job, half.toString());
    assertThat(check.status()).isEqualTo(1);
    List<String> here = digits(check, "here");
    List<String> absent = digits(check, "absent");
    assertThat(here).hasSizeBetween(9, 12);
    assertThat(absent).hasSize(16 - here.size()).doesNotContainAnyElementsOf(here);
  }

  private static List<String> digits(Shop.Outcome outcome, String done) {
    return outcome.rows().stream().filter(row -> row[1].equals(done)).map(row -> row[0]).toList();
  }

  @Test
  void theMarkedPictureHasTheSizeOfThePhotographAndDiffersFromIt() throws IOException {
    Path marked = folder.resolve("new folder").resolve("marked.png");
    shop.right(
        "tray", "out", "--job", job, photograph, "--preview", "--picture", marked.toString());
    BufferedImage before = ImageIO.read(Path.of(photograph).toFile());
    BufferedImage after = ImageIO.read(marked.toFile());
    assertThat(after.getWidth()).isEqualTo(before.getWidth());
    assertThat(after.getHeight()).isEqualTo(before.getHeight());
    int blue = 0;
    for (int y = 0; y < after.getHeight(); y++) {
      for (int x = 0; x < after.getWidth(); x++) {
        blue += (after.getRGB(x, y) & 0xFFFFFF) == 0x56B4E9 ? 1 : 0;
      }
    }
    assertThat(blue).isGreaterThan(16 * 200);
    assertThat(Files.list(marked.getParent())).hasSize(1);
  }

  @Test
  void aPictureWithoutATagIsAStop() throws IOException {
    Path empty = folder.resolve("empty.png");
    ImageIO.write(new BufferedImage(64, 64, BufferedImage.TYPE_BYTE_GRAY), "png", empty.toFile());
    assertThat(shop.run("tray", "out", "--job", job, empty.toString()).status()).isEqualTo(1);
    assertThat(shop.run("tray", "check", "--job", job).status()).isEqualTo(2);
  }
}
