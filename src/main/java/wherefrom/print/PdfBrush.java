package wherefrom.print;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;

/** Draws marks on one page of a PDF. */
final class PdfBrush implements AutoCloseable {
  private static final double PT_PER_MM = 72 / 25.4;

  /** How far the handles of a quarter circle reach, in radii. */
  private static final double QUARTER = 0.5522847498;

  private final PDPageContentStream out;
  private final double pageHeightPt;
  private final PDFont regular;
  private final PDFont bold;

  PdfBrush(PDPageContentStream out, double pageHeightPt, PDFont regular, PDFont bold) {
    this.out = out;
    this.pageHeightPt = pageHeightPt;
    this.regular = regular;
    this.bold = bold;
  }

  /** Draws marks whose origin lies at a point of the page, in millimetres from its top left. */
  void draw(List<Mark> marks, double right, double down) throws IOException {
    for (Mark mark : marks) {
      draw(mark, right, down);
    }
  }

  private void draw(Mark mark, double right, double down) throws IOException {
    if (mark instanceof Mark.Words words) {
      draw(words, right, down);
    } else if (mark instanceof Mark.Symbol symbol) {
      draw(symbol, right, down);
    } else if (mark instanceof Mark.Line line) {
      out.setLineWidth((float) (line.thickness() * PT_PER_MM));
      out.moveTo(x(line.x1() + right), y(line.y1() + down));
      out.lineTo(x(line.x2() + right), y(line.y2() + down));
      out.stroke();
    } else if (mark instanceof Mark.Black black) {
      Box box = black.box().movedBy(right, down);
      out.addRect(x(box.x()), y(box.bottom()), pt(box.width()), pt(box.height()));
      out.fill();
    } else if (mark instanceof Mark.ArrowUp arrow) {
      draw(arrow.box().movedBy(right, down));
    } else if (mark instanceof Mark.Circle circle) {
      out.setLineWidth((float) (circle.thickness() * PT_PER_MM));
      drawCircle(circle.box().movedBy(right, down));
    }
  }

  private void draw(Mark.Words words, double right, double down) throws IOException {
    if (words.white()) {
      out.setNonStrokingColor(1f);
    }
    out.beginText();
    out.setFont(words.bold() ? bold : regular, pt(words.capMm() / Typeface.CAP_HEIGHT));
    out.newLineAtOffset(x(words.x() + right), y(words.baseline() + down));
    out.showText(words.text());
    out.endText();
    if (words.white()) {
      out.setNonStrokingColor(0f);
    }
  }

  /** One path of whole modules; the corner lies on a whole dot counted from the page's corner. */
  private void draw(Mark.Symbol symbol, double right, double down) throws IOException {
    double dot = 72.0 / symbol.dpi();
    double module = symbol.moduleDots() * dot;
    double left = PrinterDots.nearest(symbol.box().x() + right, symbol.dpi()) * dot;
    double top = PrinterDots.nearest(symbol.box().y() + down, symbol.dpi()) * dot;
    out.saveGraphicsState();
    out.transform(
        new Matrix(
            (float) module, 0, 0, (float) -module, (float) left, (float) (pageHeightPt - top)));
    appendPath(Outline.of(symbol.modules()));
    out.fillEvenOdd();
    out.restoreGraphicsState();
  }

  /**
   * A symbol has some hundred corners, all of them small whole numbers: handed over as one piece
   * they take a fraction of the time of as many calls.
   */
  @SuppressWarnings("deprecation")
  private void appendPath(List<int[]> loops) throws IOException {
    StringBuilder path = new StringBuilder(4096);
    for (int[] loop : loops) {
      for (int at = 0; at < loop.length; at += 2) {
        path.append(loop[at]).append(' ').append(loop[at + 1]).append(at == 0 ? " m\n" : " l\n");
      }
      path.append("h\n");
    }
    out.appendRawCommands(path.toString().getBytes(StandardCharsets.US_ASCII));
  }

  private void draw(Box arrow) throws IOException {
    double middle = arrow.x() + arrow.width() / 2;
    double shoulder = arrow.y() + 0.55 * arrow.height();
    double half = 0.16 * arrow.width();
    out.moveTo(x(middle), y(arrow.y()));
    out.lineTo(x(arrow.right()), y(shoulder));
    out.lineTo(x(middle + half), y(shoulder));
    out.lineTo(x(middle + half), y(arrow.bottom()));
    out.lineTo(x(middle - half), y(arrow.bottom()));
    out.lineTo(x(middle - half), y(shoulder));
    out.lineTo(x(arrow.x()), y(shoulder));
    out.closePath();
    out.fill();
  }

  private void drawCircle(Box box) throws IOException {
    double radius = box.width() / 2;
    double handle = QUARTER * radius;
    double x = box.x() + radius;
    double y = box.y() + radius;
    out.moveTo(x(x + radius), y(y));
    curve(x + radius, y + handle, x + handle, y + radius, x, y + radius);
    curve(x - handle, y + radius, x - radius, y + handle, x - radius, y);
    curve(x - radius, y - handle, x - handle, y - radius, x, y - radius);
    curve(x + handle, y - radius, x + radius, y - handle, x + radius, y);
    out.stroke();
  }

  private void curve(double x1, double y1, double x2, double y2, double x3, double y3)
      throws IOException {
    out.curveTo(x(x1), y(y1), x(x2), y(y2), x(x3), y(y3));
  }

  private static float pt(double millimetres) {
    return (float) (millimetres * PT_PER_MM);
  }

  private static float x(double millimetres) {
    return pt(millimetres);
  }

  private float y(double millimetres) {
    return (float) (pageHeightPt - millimetres * PT_PER_MM);
  }

  @Override
  public void close() throws IOException {
    out.close();
  }
}
