package wherefrom.print;

import java.io.IOException;
import java.util.List;
import wherefrom.pdf.Typeface;

/** Draws marks on one page of a PDF. */
final class PdfBrush {
  private static final double PT_PER_MM = 72 / 25.4;

  /** How far the handles of a quarter circle reach, in radii. */
  private static final double QUARTER = 0.5522847498;

  private final PdfContent out = new PdfContent();
  private final double pageHeightPt;
  private final PdfFonts fonts;
  private double lineWidth;

  PdfBrush(double pageHeightPt, PdfFonts fonts) {
    this.pageHeightPt = pageHeightPt;
    this.fonts = fonts;
  }

  PdfContent content() {
    return out;
  }

  /** Draws marks whose origin lies at a point of the page, in millimetres from its top left. */
  void draw(List<PaperMark> marks, double right, double down) throws IOException {
    Pen pen = new Pen(right, down);
    for (PaperMark mark : marks) {
      mark.draw(pen);
    }
  }

  /** Draws marks whose origin lies at a point of the page. */
  private final class Pen implements PaperMark.Pen<IOException> {
    private final double right;
    private final double down;

    private Pen(double right, double down) {
      this.right = right;
      this.down = down;
    }

    @Override
    public void words(PaperMark.Words words) throws IOException {
      draw(words, right, down);
    }

    @Override
    public void symbol(PaperMark.Symbol symbol) {
      draw(symbol, right, down);
    }

    @Override
    public void line(PaperMark.Line line) {
      thickness(line.thickness());
      moveTo(line.x1() + right, line.y1() + down);
      lineTo(line.x2() + right, line.y2() + down);
      out.word("S");
    }

    @Override
    public void black(PaperMark.Black black) {
      Box box = black.box().movedBy(right, down);
      at(box.x(), box.bottom());
      out.point(pt(box.width()), pt(box.height())).word("re f");
    }

    @Override
    public void arrow(PaperMark.ArrowUp arrow) {
      draw(arrow.box().movedBy(right, down));
    }

    @Override
    public void circle(PaperMark.Circle circle) {
      thickness(circle.thickness());
      drawCircle(circle.box().movedBy(right, down));
    }
  }

  private void draw(PaperMark.Words words, double right, double down) throws IOException {
    if (words.white()) {
      out.word("1 g");
    }
    out.word("BT");
    boolean first = true;
    for (PdfFonts.Piece piece : fonts.pieces(words.text(), words.bold())) {
      out.word(piece.font().name()).number(pt(words.capMm() / Typeface.CAP_HEIGHT)).word("Tf");
      if (first) {
        at(words.x() + right, words.baseline() + down);
        out.word("Td");
      }
      out.glyphs(piece.font().glyphs(piece.text())).word("Tj");
      first = false;
    }
    out.word("ET");
    if (words.white()) {
      out.word("0 g");
    }
  }

  /** One path of whole modules; the corner lies on a whole dot counted from the page's corner. */
  private void draw(PaperMark.Symbol symbol, double right, double down) {
    double dot = 72.0 / symbol.dpi();
    double module = symbol.moduleDots() * dot;
    double left = PrinterDots.nearest(symbol.box().x() + right, symbol.dpi()) * dot;
    double top = PrinterDots.nearest(symbol.box().y() + down, symbol.dpi()) * dot;
    out.word("q").exact(module).word("0 0").exact(-module);
    out.exact(left).exact(pageHeightPt - top).word("cm");
    for (int[] loop : SymbolOutline.of(symbol.modules())) {
      append(loop);
    }
    out.word("f* Q");
  }

  /** Filling closes what is open. */
  private void append(int[] loop) {
    if (loop.length == 8) {
      out.small(loop[0]).small(loop[1]).small(loop[4] - loop[0]).small(loop[5] - loop[1]);
      out.word("re");
      return;
    }
    for (int at = 0; at < loop.length; at += 2) {
      out.small(loop[at]).small(loop[at + 1]).word(at == 0 ? "m" : "l");
    }
  }

  private void draw(Box arrow) {
    double middle = arrow.x() + arrow.width() / 2;
    double shoulder = arrow.y() + 0.55 * arrow.height();
    double half = 0.16 * arrow.width();
    moveTo(middle, arrow.y());
    lineTo(arrow.right(), shoulder);
    lineTo(middle + half, shoulder);
    lineTo(middle + half, arrow.bottom());
    lineTo(middle - half, arrow.bottom());
    lineTo(middle - half, shoulder);
    lineTo(arrow.x(), shoulder);
    out.word("f");
  }

  private void drawCircle(Box box) {
    double radius = box.width() / 2;
    double handle = QUARTER * radius;
    double x = box.x() + radius;
    double y = box.y() + radius;
    moveTo(x + radius, y);
    curve(x + radius, y + handle, x + handle, y + radius, x, y + radius);
    curve(x - handle, y + radius, x - radius, y + handle, x - radius, y);
    curve(x - radius, y - handle, x - handle, y - radius, x, y - radius);
    curve(x + handle, y - radius, x + radius, y - handle, x + radius, y);
    out.word("s");
  }

  private void curve(double x1, double y1, double x2, double y2, double x3, double y3) {
    at(x1, y1);
    at(x2, y2);
    at(x3, y3);
    out.word("c");
  }

  private void thickness(double millimetres) {
    if (millimetres != lineWidth) {
      lineWidth = millimetres;
      out.number(pt(millimetres)).word("w");
    }
  }

  private void moveTo(double x, double y) {
    at(x, y);
    out.word("m");
  }

  private void lineTo(double x, double y) {
    at(x, y);
    out.word("l");
  }

  private void at(double x, double y) {
    out.point(pt(x), pageHeightPt - pt(y));
  }

  private static double pt(double millimetres) {
    return millimetres * PT_PER_MM;
  }
}
