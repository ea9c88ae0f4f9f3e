package wherefrom.phone;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import wherefrom.files.Outgoing;
import wherefrom.job.OpenJob;
import wherefrom.job.print.Face;
import wherefrom.job.print.Nudge;
import wherefrom.job.print.PrintOrder;
import wherefrom.job.print.PrintSetup;
import wherefrom.print.PdfSheetPrinter;
import wherefrom.scan.picture.JpegFiles;

/** Tags as the program prints them, on a bench as a phone photographs them. */
final class PhotographedTags {
  private static final int WIDTH = 4000;
  private static final int HEIGHT = 3000;
  private static final int DPI = 300;
  private static final float QUALITY = 0.85f;

  private final Path folder;
  private final List<BufferedImage> pages;

  private PhotographedTags(Path folder, List<BufferedImage> pages) {
    this.folder = folder;
    this.pages = pages;
  }

  /** Prints these tags, each on a page of its own. */
  static PhotographedTags print(OpenJob job, List<Face> faces, Path folder) throws IOException {
    PrintSetup setup = new PrintSetup("roll-2.25x1.25", 1, Nudge.NONE, OptionalInt.empty());
    Path pdf = folder.resolve("tags.pdf");
    new PdfSheetPrinter()
        .save(PrintOrder.of(job.state().name(), faces, setup), Outgoing.replacing(pdf));
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PDFRenderer renderer = new PDFRenderer(document);
      BufferedImage[] pages = new BufferedImage[document.getNumberOfPages()];
      for (int at = 0; at < pages.length; at++) {
        pages[at] = renderer.renderImageWithDPI(at, DPI, ImageType.RGB);
      }
      return new PhotographedTags(folder, Arrays.asList(pages));
    }
  }

  /** A bench with tags on it, of twelve megapixels; none, one or several. */
  Path photograph(String name, boolean damaged, int... tags) throws IOException {
    BufferedImage bench = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D paint = bench.createGraphics();
    paint.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    paint.setPaint(
        new GradientPaint(0, 0, new Color(0x6A625A), WIDTH, HEIGHT, new Color(0xA79F92)));
    paint.fillRect(0, 0, WIDTH, HEIGHT);
    for (int at = 0; at < tags.length; at++) {
      lay(paint, pages.get(tags[at]), at, tags.length, damaged);
    }
    paint.dispose();
    Path file = folder.resolve(name + ".jpg");
    Files.write(file, JpegFiles.of(blurred(bench), QUALITY));
    return file;
  }

  private static void lay(
      Graphics2D paint, BufferedImage page, int at, int count, boolean damaged) {
    Graphics2D tag = (Graphics2D) paint.create();
    tag.translate(WIDTH * (at + 0.5) / count, HEIGHT * 0.5 + 120 * (at % 2));
    tag.rotate(Math.toRadians(13 + 40 * at));
    double size = 1100.0 / page.getWidth();
    tag.scale(size, size * 0.94);
    tag.translate(-page.getWidth() / 2.0, -page.getHeight() / 2.0);
    tag.drawImage(page, 0, 0, null);
    if (damaged) {
      stain(tag, page);
    }
    tag.dispose();
  }

  /** Oil over the symbol, and a corner of the tag torn off. */
  private static void stain(Graphics2D tag, BufferedImage page) {
    tag.setColor(new Color(40, 28, 12, 150));
    tag.fill(new Ellipse2D.Double(0, 0, page.getWidth() * 0.55, page.getHeight() * 0.5));
    tag.setColor(new Color(30, 20, 8));
    for (int blot = 0; blot < 26; blot++) {
      double x = page.getWidth() * (0.03 + 0.037 * blot);
      double y = page.getHeight() * (0.1 + 0.8 * (blot * 7 % 13) / 13.0);
      tag.fill(new Ellipse2D.Double(x, y, 14, 11));
    }
  }

  private static BufferedImage blurred(BufferedImage sharp) {
    float[] weights = new float[9];
    Arrays.fill(weights, 1 / 9f);
    BufferedImage soft = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_3BYTE_BGR);
    new ConvolveOp(new Kernel(3, 3, weights), ConvolveOp.EDGE_NO_OP, null).filter(sharp, soft);
    return soft;
  }
}
