package wherefrom.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Set;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wherefrom.drawing.Asked;
import wherefrom.drawing.BelowPanRail;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.CylinderZoom;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.EngineAbove;
import wherefrom.drawing.EngineBelow;
import wherefrom.drawing.EngineGeometry;
import wherefrom.drawing.PartState;
import wherefrom.drawing.View;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.engine.ValveSpot;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/** Looks at a printed drawing as a reader does: the page is rendered and its ink is measured. */
class PdfDrawingTest {
  private static final double DPI = 144;
  private static final double LEFT = 72;
  private static final double TOP = 770;
  private static final Layout V8 = ReadyLayouts.find("v8-odd-even").orElseThrow();
  private static final Set<PartKind> KINDS =
      EnumSet.of(
          PartKind.ROCKER,
          PartKind.PUSHROD,
          PartKind.LIFTER,
          PartKind.SPRING,
          PartKind.ROD_SHELL,
          PartKind.MAIN_SHELL);
  private static final Asked ASKED = Asked.of(KINDS);

  private PDDocument document = new PDDocument();
  private final EngineGeometry above =
      EngineGeometry.of(
          V8, View.ABOVE, new Bounds(0, 0, 480, 240), PdfDrawing.GLASS, BelowPanRail.NONE);
  private BufferedImage image = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);

  private static PartState state(Place place) {
    return switch (place.spot().key()) {
      case "3EX", "R3U", "R3L" -> PartState.FITTED;
      case "1EX", "R1L" -> PartState.OUT;
      case "4IN" -> PartState.AT_SHOP;
      default -> PartState.IN;
    };
  }

  @BeforeEach
  void print() throws IOException {
    PDPage page = new PDPage(PDRectangle.A4);
    document.addPage(page);
    PageLetters regular = PageLetters.regular(document);
    PageLetters bold = PageLetters.bold(document);
    EngineGeometry below =
        EngineGeometry.of(
            V8, View.BELOW, new Bounds(0, 240, 480, 240), PdfDrawing.GLASS, BelowPanRail.NAMES);
    Drawing zoom = CylinderZoom.of(V8, 3, new Bounds(0, 490, 480, 230), ASKED, PdfDrawing.GLASS);
    try (PDPageContentStream out = new PDPageContentStream(document, page)) {
      PdfDrawing pdf = new PdfDrawing(out, regular, bold, LEFT, TOP);
      pdf.draw(EngineAbove.of(above, ASKED), ASKED, PdfDrawingTest::state, true);
      pdf.draw(EngineBelow.of(below, ASKED), ASKED, PdfDrawingTest::state, true);
      pdf.draw(zoom, ASKED, PdfDrawingTest::state, false);
    }
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    document.save(file);
    document.close();
    document = Loader.loadPDF(file.toByteArray());
    image = new PDFRenderer(document).renderImageWithDPI(0, (float) DPI);
    if (Boolean.getBoolean("drawn.pictures")) {
      Path folder = Path.of(System.getProperty("wherefrom.target", "target"), "drawn");
      Files.createDirectories(folder);
      ImageIO.write(image, "png", folder.resolve("page.png").toFile());
    }
  }

  /** The color at a point of the drawing. */
  private int color(double x, double y) {
    double down = PDRectangle.A4.getHeight() - TOP + y;
    int px = (int) Math.round((LEFT + x) * DPI / 72);
    return image.getRGB(px, (int) Math.round(down * DPI / 72)) & 0xFFFFFF;
  }

  /** The color in the middle of a rocker's arm, between its pivot and its tip. */
  private int rocker(String key) {
    ValveSpot valve = (ValveSpot) Place.find("rocker@" + key).orElseThrow().spot();
    double outward = valve.cylinder() % 2 == 1 ? 1 : -1;
    return color(above.valveX(valve), above.axis() + outward * 0.74 * above.pitch());
  }

  @Test
  void statesAreToldByTheirInk() {
    assertThat(rocker("3EX")).as("fitted").isEqualTo(0xCDE6F6);
    assertThat(rocker("5EX")).as("in").isEqualTo(0xFFFFFF);
    assertThat(rocker("1EX")).as("out, the head is seen").isEqualTo(0xEDF0EE);
  }

  @Test
  void numbersAndNamesAreWordsAndNothingIsABitmap() throws IOException {
    String text = new PDFTextStripper().getText(document);
    assertThat(text).contains("M1", "M5", "3 EX", "3 IN", "pushrod", "8");
    assertThat(document.getPage(0).getResources().getXObjectNames()).isEmpty();
  }
}
