package wherefrom.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.files.Outgoing;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.RecordPicture;
import wherefrom.job.record.BuildRecord;
import wherefrom.pictures.Corners;

/** The build record's pictures, rasterised. */
class RecordPicturesTest {
  private static final int DPI = 72;

  @TempDir Path folder;

  private final FileReports reports = new FileReports();

  /** Blue and portrait, its upper left corner red. */
  private static BufferedImage portrait(int width, int height) {
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = picture.createGraphics();
    graphics.setColor(Color.BLUE);
    graphics.fillRect(0, 0, width, height);
    graphics.setColor(Color.RED);
    graphics.fillRect(0, 0, width / 3, height / 3);
    graphics.dispose();
    return picture;
  }

  private Path write(RecordPicture picture) throws IOException {
    LocalDate day = LocalDate.parse("2026-03-04");
    Path pdf = folder.resolve("record.pdf");
    reports.writeRecord(
        new BuildRecord("Farm engine", "V8", day, day, List.of(), List.of(), List.of(picture)),
        PaperSize.A4,
        Outgoing.replacing(pdf));
    return pdf;
  }

  private static BufferedImage lastPage(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      int last = document.getNumberOfPages() - 1;
      return new PDFRenderer(document).renderImageWithDPI(last, DPI, ImageType.RGB);
    }
  }

  private static boolean isRed(int rgb) {
    return (rgb >> 16 & 0xFF) > 180 && (rgb & 0xFF) < 80;
  }

  private static boolean isBlue(int rgb) {
    return (rgb & 0xFF) > 180 && (rgb >> 16 & 0xFF) < 80;
  }

  /** The smallest box round everything in colour. */
  private static Rectangle coloured(BufferedImage page) {
    Rectangle box = new Rectangle(-1, -1);
    for (int y = 0; y < page.getHeight(); y++) {
      for (int x = 0; x < page.getWidth(); x++) {
        if (isRed(page.getRGB(x, y)) || isBlue(page.getRGB(x, y))) {
          box.add(new Rectangle(x, y, 1, 1));
        }
      }
    }
    return box;
  }

  /** Small ones are kept without loss, large ones are made smaller: both ways must turn. */
  @ParameterizedTest
  @CsvSource({
    "1, 60", "2, 60", "3, 60", "4, 60", "5, 60", "6, 60", "7, 60", "8, 60",
    "1, 1500", "2, 1500", "3, 1500", "4, 1500", "5, 1500", "6, 1500", "7, 1500", "8, 1500"
  })
  void aPortraitStandsUprightHoweverTheCameraWasHeld(int orientation, int width)
      throws IOException {
    byte[] file = Corners.jpeg(portrait(width, width * 4 / 3), orientation);
    BufferedImage page =
        lastPage(write(new RecordPicture("lifter", "", () -> new ByteArrayInputStream(file))));
    Rectangle box = coloured(page);
    assertThat((double) box.height / box.width).isBetween(1.28, 1.39);
    int left = box.x + box.width / 8;
    int right = box.x + box.width * 7 / 8;
    int top = box.y + box.height / 8;
    int bottom = box.y + box.height * 7 / 8;
    assertThat(isRed(page.getRGB(left, top))).isTrue();
    assertThat(isBlue(page.getRGB(right, top))).isTrue();
    assertThat(isBlue(page.getRGB(left, bottom))).isTrue();
    assertThat(isBlue(page.getRGB(right, bottom))).isTrue();
  }

  @Test
  void aPictureThatIsGoneIsSaidAndTheRecordGoesOn() throws IOException {
    Path pdf = write(RecordPicture.of("cam lobe", "nose", folder.resolve("gone.jpg")));
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      assertThat(new PDFTextStripper().getText(document).replaceAll("\\s+", " "))
          .contains("cam lobe", "nose (the picture file is missing or cannot be shown)");
    }
  }
}
