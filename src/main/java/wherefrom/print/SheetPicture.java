package wherefrom.print;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import wherefrom.job.image.ColourImage;

/** A page as it comes out of the printer, over the edges of the stock's labels. */
final class SheetPicture {
  private static final double MM_PER_INCH = 25.4;
  private static final Color EDGE = new Color(0x77, 0x74, 0x6c);
  private static final Color USED = new Color(0xd2, 0xce, 0xc4);

  private SheetPicture() {}

  /** A page alone; its longer side has so many pixels. */
  static ColourImage of(PDDocument document, int page, int longest) throws IOException {
    PDRectangle box = document.getPage(page - 1).getMediaBox();
    float scale = longest / Math.max(box.getWidth(), box.getHeight());
    return colours(new PDFRenderer(document).renderImage(page - 1, scale, ImageType.RGB));
  }

  private static ColourImage colours(BufferedImage picture) {
    int width = picture.getWidth();
    int height = picture.getHeight();
    return new ColourImage(width, height, picture.getRGB(0, 0, width, height, null, 0, width));
  }

  /**
   * @param page counted from 1
   * @param used how many labels at its head are used up; they are crossed out
   * @param longest what the picture's longer side has, in pixels
   */
  static ColourImage of(PDDocument document, int page, LabelStock stock, int used, int longest)
      throws IOException {
    double wide = stock.page().width().millimetres();
    double high = stock.page().height().millimetres();
    double pxPerMm = longest / Math.max(wide, high);
    BufferedImage picture =
        new PDFRenderer(document)
            .renderImageWithDPI(page - 1, (float) (pxPerMm * MM_PER_INCH), ImageType.RGB);
    Graphics2D graphics = picture.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setStroke(new BasicStroke(1));
    graphics.setColor(EDGE);
    graphics.draw(
        new Rectangle2D.Double(0, 0, picture.getWidth() - 1.0, picture.getHeight() - 1.0));
    for (int label = 0; label < stock.labelsPerPage(); label++) {
      draw(graphics, stock.labelBox(label), label < used, pxPerMm);
    }
    graphics.dispose();
    return colours(picture);
  }

  private static void draw(Graphics2D graphics, Box label, boolean used, double pxPerMm) {
    Rectangle2D edge =
        new Rectangle2D.Double(
            label.x() * pxPerMm,
            label.y() * pxPerMm,
            label.width() * pxPerMm,
            label.height() * pxPerMm);
    if (used) {
      graphics.setColor(USED);
      graphics.fill(edge);
      graphics.setColor(EDGE);
      graphics.draw(new Line2D.Double(edge.getX(), edge.getY(), edge.getMaxX(), edge.getMaxY()));
      graphics.draw(new Line2D.Double(edge.getX(), edge.getMaxY(), edge.getMaxX(), edge.getY()));
    }
    graphics.setColor(EDGE);
    graphics.draw(edge);
  }
}
