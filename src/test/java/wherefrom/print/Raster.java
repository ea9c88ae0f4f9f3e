package wherefrom.print;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Part of a page as a printer of so many dots per inch would be given it, in grey values. */
record Raster(BufferedImage image, int dpi) {

  /** The whole page, with the renderer's own settings. */
  static Raster ofPage(PDDocument pdf, int page, int dpi) throws IOException {
    var box = pdf.getPage(page).getMediaBox();
    return ofArea(pdf, page, dpi, new Box(0, 0, mm(box.getWidth()), mm(box.getHeight())));
  }

  /** What lies in a box of the page; the box grows to whole dots. */
  static Raster ofArea(PDDocument pdf, int page, int dpi, Box area) throws IOException {
    double dots = dpi / 25.4;
    int left = (int) Math.floor(area.x() * dots + 1e-6);
    int top = (int) Math.floor(area.y() * dots + 1e-6);
    int width = (int) Math.ceil(area.right() * dots - 1e-6) - left;
    int height = (int) Math.ceil(area.bottom() * dots - 1e-6) - top;
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.setBackground(Color.WHITE);
    graphics.fillRect(0, 0, width, height);
    graphics.transform(AffineTransform.getTranslateInstance(-left, -top));
    new PDFRenderer(pdf).renderPageToGraphics(page, graphics, dpi / 72f);
    graphics.dispose();
    return new Raster(image, dpi);
  }

  /** The part of it in a box, millimetres from its own corner. */
  Raster part(Box area) {
    double dots = dpi / 25.4;
    int left = Math.max(0, (int) Math.floor(area.x() * dots));
    int top = Math.max(0, (int) Math.floor(area.y() * dots));
    int right = Math.min(image.getWidth(), (int) Math.ceil(area.right() * dots));
    int bottom = Math.min(image.getHeight(), (int) Math.ceil(area.bottom() * dots));
    BufferedImage copy =
        new BufferedImage(right - left, bottom - top, BufferedImage.TYPE_BYTE_GRAY);
    copy.getRaster().setRect(-left, -top, image.getRaster());
    return new Raster(copy, dpi);
  }

  byte[] pixels() {
    return ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
  }

  int width() {
    return image.getWidth();
  }

  int height() {
    return image.getHeight();
  }

  /** 0 black to 255 white. */
  int at(int x, int y) {
    return image.getRaster().getSample(x, y, 0);
  }

  private static double mm(double points) {
    return points * 25.4 / 72;
  }
}
