package wherefrom.print;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import wherefrom.job.print.PrintOrder;
import wherefrom.job.print.PrintSetup;
import wherefrom.job.print.TagFace;

/** Labels as they stand on the sheet PDF, for tests that need to look at them from near by. */
public final class PrintedLabels {
  private static final String STOCK = "a4-3x8-63.5x33.9";
  private static final LabelStock SHEET = stock();
  private static final LabelPlan PLAN = LabelPlan.find(SHEET, SHEET.dpi()).orElseThrow();

  private PrintedLabels() {}

  /**
   * One label, cut out along its edges.
   *
   * @param symbolX centre of the symbol in pixels from the left
   * @param symbolY centre of the symbol in pixels from the top
   */
  public record Print(BufferedImage image, double symbolX, double symbolY) {}

  /**
   * Writes the sheet of one tag as PDF and draws its label from that, in grey.
   *
   * @param blockPixels width of the printed block of symbol, quiet zone, frame and margin
   */
  public static Print of(TagFace face, int blockPixels) {
    Box label = SHEET.labelBox(0);
    Box symbol = PLAN.symbol();
    double pixelsPerMm = blockPixels / symbol.width();
    int width = (int) Math.round(label.width() * pixelsPerMm);
    int height = (int) Math.round(label.height() * pixelsPerMm);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D graphics = image.createGraphics();
    graphics.setBackground(Color.WHITE);
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, width, height);
    graphics.transform(
        AffineTransform.getTranslateInstance(-label.x() * pixelsPerMm, -label.y() * pixelsPerMm));
    try (PDDocument pdf = Loader.loadPDF(sheet(face))) {
      new PDFRenderer(pdf).renderPageToGraphics(0, graphics, (float) (pixelsPerMm * 25.4 / 72));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    graphics.dispose();
    return new Print(
        image,
        (symbol.x() + symbol.width() / 2) * pixelsPerMm,
        (symbol.y() + symbol.height() / 2) * pixelsPerMm);
  }

  private static byte[] sheet(TagFace face) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PdfPages pages = new PdfPages("Tags")) {
      PrintOrder order = PrintOrder.of("Tags", List.of(face), PrintSetup.on(STOCK));
      new TagSheets(SHEET, PLAN, order).draw(pages);
      pages.write(out);
    }
    return out.toByteArray();
  }

  private static LabelStock stock() {
    return ((StockReading.Good) StockShelf.ofReady().find(STOCK)).stock();
  }
}
